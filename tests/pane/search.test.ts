import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/functions/catalogue'
import { isEmptyQuery, searchOf } from '../../src/pane/search'

const search = searchOf(catalogue)

function idsFor(query: string): readonly string[] {
  return search(query).map(({ id }) => id)
}

describe('the search for functions', () => {
  it.each(catalogue.map(({ id }) => id))('puts %s first when its own name is typed', (id) => {
    expect(idsFor(id.toLowerCase())[0]).toBe(id)
    expect(idsFor(`STICK.${id}`)[0]).toBe(id)
  })

  it.each([
    ['perlite', 'FILL'],
    ['perlite', 'BLENDCOST'],
    ['vermiculite', 'PACKPRICE'],
    ['liner', 'CUTTINGS'],
    ['plug', 'CUTTINGS'],
    ['plug', 'FILL'],
    ['cost per cutting', 'MEDIUMCOST'],
    ['cost per liner', 'PERLINER'],
    ['how many bags of perlite', 'BAGS'],
    ['coir brick', 'PACKPRICE'],
    ['flats', 'TRAYS'],
    ['rockwool', 'BLOCKS'],
    ['sand bed', 'BEDFILL'],
    ['gallon', 'UNITS'],
    ['wash trays', 'REUSECOST'],
    ['payback', 'BREAKEVEN'],
    ['cash flow', 'REUSELEDGER'],
    ['schedule', 'REUSELEDGER'],
    ['cheapest way', 'COMPARE'],
    ['overspend', 'VARIANCE'],
    ['favorable', 'VARIANCE'],
    ['tornado', 'SWINGS'],
    ['sensitivity', 'SWINGS'],
    ['risk', 'ODDS'],
    ['Monte Carlo', 'ODDS'],
    ['survival', 'CUTTINGS'],
    ['weight of a blend', 'BLENDWEIGHT'],
    ['freight', 'PACKPRICE'],
    ['mother plants', 'MOTHERPLANTS'],
    ['stock plants', 'MOTHERPLANTS'],
    ['lime', 'MIXLOADS'],
    ['fertilizer', 'MIXLOADS'],
    ['mixer', 'MIXLOADS'],
    ['calendar', 'STANDING'],
    ['bench occupancy', 'STANDING'],
    ['containers at once', 'PEAK'],
    ['when to stick', 'STICKDAY'],
    ['delivery date', 'STICKDAY'],
    ['forecast', 'ONTRACK'],
    ['vesselVolumeMl', 'FILL'],
  ])('finds by "%s" the function %s', (query, id) => {
    expect(idsFor(query)).toContain(id)
  })

  it('finds only what meets every word', () => {
    const both = idsFor('cost cutting')
    expect(both).toContain('MEDIUMCOST')
    expect(both.length).toBeLessThan(idsFor('cost').length)
    expect(idsFor('fill zebra')).toEqual([])
  })

  it('forgives one slip of the finger in a word', () => {
    expect(idsFor('vermiculte')).toEqual([])
    expect(idsFor('litrs of watr')).toContain('WATER')
    expect(idsFor('blendcots')).toContain('BLENDCOST')
    expect(idsFor('cuttngs')).toContain('CUTTINGS')
  })

  it('forgives capitals, accents, plurals and punctuation', () => {
    expect(idsFor('TRÁYS!')).toEqual(idsFor('tray'))
    expect(idsFor('  Cuttings,   liners ')).toEqual(idsFor('cutting liner'))
  })

  it('finds nothing for a word that no text holds', () => {
    expect(idsFor('zebra')).toEqual([])
  })

  it('takes a query without meaning for none and lists everything', () => {
    for (const query of ['', '   ', 'how many', '?']) {
      expect(isEmptyQuery(query)).toBe(true)
      expect(search(query)).toEqual(catalogue)
    }
  })
})
