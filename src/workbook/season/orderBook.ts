/** The invented order book. Rates are per species on its way of rooting. */
import type { WayName } from './sixWays'

export interface OrderLine {
  readonly species: string
  readonly liners: number
  readonly deliveryWeek: number
  readonly weeks: number
  readonly way: WayName
  readonly strike: number
  readonly pottingOn: number
  readonly gradeOut: number
  /** Chance of having enough; left out, the average decides. */
  readonly confidence?: number
  /** Left out where past batches were counted, which give it, and where the batches are taken to differ by chance only. */
  readonly batchSpread?: number
}

export const orderBook: readonly OrderLine[] = [
  { species: 'Fuchsia', liners: 14_000, deliveryWeek: 16, weeks: 7, way: 'Premix', strike: 0.95, pottingOn: 0.98, gradeOut: 0.96, confidence: 0.95 },
  { species: 'Pelargonium', liners: 18_000, deliveryWeek: 21, weeks: 8, way: 'Premix', strike: 0.93, pottingOn: 0.97, gradeOut: 0.95, confidence: 0.95 },
  { species: 'Verbena', liners: 7_000, deliveryWeek: 25, weeks: 7, way: 'Premix', strike: 0.92, pottingOn: 0.97, gradeOut: 0.95 },
  { species: 'Hebe', liners: 5_000, deliveryWeek: 36, weeks: 11, way: 'Premix', strike: 0.88, pottingOn: 0.96, gradeOut: 0.95, confidence: 0.9 },
  { species: 'Osteospermum', liners: 9_000, deliveryWeek: 16, weeks: 7, way: 'Rockwool', strike: 0.94, pottingOn: 0.98, gradeOut: 0.96, confidence: 0.9 },
  { species: 'Chrysanthemum', liners: 12_000, deliveryWeek: 22, weeks: 6, way: 'Rockwool', strike: 0.97, pottingOn: 0.98, gradeOut: 0.97 },
  { species: 'Plectranthus', liners: 4_500, deliveryWeek: 18, weeks: 6, way: 'Water', strike: 0.92, pottingOn: 0.93, gradeOut: 0.95 },
  { species: 'Coleus', liners: 5_000, deliveryWeek: 19, weeks: 6, way: 'Water', strike: 0.94, pottingOn: 0.92, gradeOut: 0.94, confidence: 0.9 },
  { species: 'Dahlia', liners: 8_000, deliveryWeek: 18, weeks: 8, way: 'Vermiculite', strike: 0.88, pottingOn: 0.95, gradeOut: 0.95, confidence: 0.95 },
  { species: 'Hydrangea', liners: 7_500, deliveryWeek: 30, weeks: 10, way: 'Vermiculite', strike: 0.9, pottingOn: 0.96, gradeOut: 0.94 },
  { species: 'Lavandula', liners: 16_000, deliveryWeek: 24, weeks: 10, way: 'Peat, coir and perlite', strike: 0.88, pottingOn: 0.96, gradeOut: 0.95, confidence: 0.95 },
  { species: 'Salvia', liners: 10_000, deliveryWeek: 20, weeks: 7, way: 'Peat, coir and perlite', strike: 0.93, pottingOn: 0.97, gradeOut: 0.96 },
  { species: 'Rosmarinus', liners: 9_000, deliveryWeek: 25, weeks: 10, way: 'Peat, coir and perlite', strike: 0.86, pottingOn: 0.96, gradeOut: 0.94, confidence: 0.9 },
  { species: 'Buddleja', liners: 6_000, deliveryWeek: 28, weeks: 9, way: 'Sand bed', strike: 0.9, pottingOn: 0.93, gradeOut: 0.95 },
  { species: 'Cornus', liners: 5_500, deliveryWeek: 32, weeks: 12, way: 'Sand bed', strike: 0.84, pottingOn: 0.93, gradeOut: 0.93, confidence: 0.9 },
  { species: 'Ligustrum', liners: 8_000, deliveryWeek: 34, weeks: 12, way: 'Sand bed', strike: 0.86, pottingOn: 0.94, gradeOut: 0.95 },
  { species: 'Euonymus', liners: 4_000, deliveryWeek: 33, weeks: 12, way: 'Sand bed', strike: 0.83, pottingOn: 0.94, gradeOut: 0.94, confidence: 0.9, batchSpread: 0.04 },
]
