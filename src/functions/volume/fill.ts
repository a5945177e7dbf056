import { defineBySteps, type TextsOf } from '../../core/definition/definition'
import { number, quantity, share } from '../../core/definition/parameter'

export const fill = defineBySteps({
  id: 'FILL',
  subject: 'volume',
  parameters: {
    vessels: number('vessels', { text: 'cells, trays or pots to fill', example: 72, atLeast: 0 }),
    vesselVolumeMl: quantity('mL', { text: 'volume of one of them', example: 4.38, above: 0 }),
    settle: share({
      text: 'share of its height that loose mix drops when it is firmed and watered',
      example: 0.1,
      default: 0,
      below: 1,
    }),
    spill: share({
      text: 'share of the loose mix that is lost at the filling line',
      example: 0.03,
      default: 0,
      below: 1,
    }),
  },
  result: { name: 'litres', unit: 'L loose' },
  steps: [
    ['full', 'vessels * vesselVolumeMl / 1000', 'L', 'volume of all vessels, settled'],
    ['stays', '(1 - settle) * (1 - spill)', 'share', 'what remains in the vessels of a loose litre'],
    ['litres', 'full / stays', 'L loose', 'loose medium to have at hand'],
  ],
})

export const fillText: TextsOf<typeof fill> = {
  summary: 'Litres of loose medium that fill a number of vessels.',
  convention:
    'Settling and spilling divide: with 10 % settling 100 L of full cells take 111.1 L of loose mix, not 110 L. The litres are loose ones.',
  result: 'loose medium',
  examples: [
    {
      text: 'A tray of 72 cells of 4.38 cubic inches holds 5.168 L',
      given: [72, '4.38 in3'],
      gives: 5.16782450304,
      source: 'north-creek-plug-sizes',
    },
    {
      text: '2,592 cells of 65 mL, the mix settling by a tenth and 3 % spilt',
      given: [2592, 65, 0.1, 0.03],
      gives: 192.989690721649,
      source: 'definition',
    },
  ],
}
