import { headingRow, inOrder } from '../../core/definition/columns'
import { defineTable, type Cell, type TextsOf } from '../../core/definition/definition'
import { numbers, quantities, quantity, share, texts } from '../../core/definition/parameter'
import { Decimal, one, zero } from '../../core/quantity/decimal'
import { roundDownToWhole, roundUpToWhole } from '../../core/quantity/rounding'

const columns = {
  item: { heading: 'item' },
  unit: { heading: 'unit' },
  fullLoad: { heading: 'full load' },
  fullLoads: { heading: 'full loads' },
  lastLoad: { heading: 'last load' },
  together: { heading: 'together' },
}

export const mixLoads = defineTable({
  id: 'MIXLOADS',
  subject: 'blend',
  parameters: {
    finishedLitres: quantity('L', { text: 'finished mix that is needed', example: 2500, atLeast: 0 }),
    parts: numbers('parts', { text: 'parts by volume, one cell a component', notAllZero: true }),
    mixerLitres: quantity('L', { text: 'loose litres that the mixer takes at a time', example: 1000, above: 0 }),
    mixShrink: share({ text: 'share of the summed volumes that vanishes in mixing', example: 0, default: 0, below: 1 }),
    additiveKgM3: quantities('kg/m3', {
      text: 'weight of each additive for a cubic metre of finished mix',
      example: 3,
      optional: true,
      atLeast: 0,
      list: 'additives',
    }),
    partNames: texts({ text: 'the names of the components', example: 'peat', optional: true }),
    additiveNames: texts({ text: 'the names of the additives', example: 'lime', optional: true, list: 'additives' }),
  },
  result: { name: 'loads', unit: 'table', columns },
  method: ({ finishedLitres, parts, mixerLitres, mixShrink, additiveKgM3, partNames, additiveNames }) => {
    const stays = one.sub(mixShrink)
    const loose = finishedLitres.div(stays)
    const loads = loose.div(mixerLitres)
    const fullLoads = roundDownToWhole(loads)
    const last = roundUpToWhole(loads).gt(fullLoads) ? loose.sub(fullLoads.mul(mixerLitres)) : zero
    const allParts = parts.reduce((sum, part) => sum.add(part))
    /** @param perLoose What goes in for a loose litre. */
    const row = (item: Cell, unit: string, perLoose: Decimal) => {
      const [fullLoad, lastLoad] = [mixerLitres.mul(perLoose), last.mul(perLoose)]
      return { item, unit, fullLoad, fullLoads, lastLoad, together: fullLoad.mul(fullLoads).add(lastLoad) }
    }
    const numbered = (index: number) => new Decimal(index + 1)
    const table = [
      ...parts.map((part, index) =>
        row(partNames[index] ?? { fact: 'component', number: numbered(index) }, 'L', part.div(allParts)),
      ),
      ...additiveKgM3.map((kgM3, index) =>
        row(
          additiveNames[index] ?? { fact: 'additive', number: numbered(index) },
          'kg',
          (kgM3 ?? zero).mul(stays).div(1000),
        ),
      ),
      row({ fact: 'finishedMix' }, 'L', stays),
    ]
    return {
      table,
      working: () => [
        {
          name: 'loose',
          text: 'all components together, before mixing',
          formula: 'finishedLitres / (1 - mixShrink)',
          value: loose,
          unit: 'L loose',
        },
        {
          name: 'fullLoads',
          text: 'full loads to mix',
          formula: 'whole part of loose / mixerLitres',
          value: fullLoads,
          unit: 'loads',
        },
        {
          name: 'last',
          text: 'loose litres of the last, smaller load',
          formula: 'loose - fullLoads * mixerLitres',
          value: last,
          unit: 'L loose',
        },
        {
          name: 'together',
          text: 'what goes into all loads, and the finished mix',
          formula: 'loose * parts / SUM(parts); finished m3 * additiveKgM3',
          value: table.map(({ together }) => together),
          unit: 'L or kg',
        },
      ],
    }
  },
})

export const mixLoadsText: TextsOf<typeof mixLoads> = {
  summary:
    'What goes into each mixer load of a blend: litres of each component, and kg of lime, feed and wetting agent.',
  convention:
    'The mixer takes loose litres: all components together as they are filled in, before they shrink; where its maker states finished mix, divide that by 1 - mixShrink. Additives are weighed for the finished mix, not for the summed components. All loads are full but the last, which is as much smaller as it comes out. In each row full load x full loads + last load is together. Without names the components and additives are numbered as they come.',
  result: 'a row for each component and additive, then the finished mix',
  columns: {
    item: { text: 'a component, an additive or the finished mix', unit: 'text' },
    unit: { text: 'what its amounts are in', unit: 'text' },
    fullLoad: { text: 'what goes into a full load', unit: 'L or kg' },
    fullLoads: { text: 'full loads to mix', unit: 'loads' },
    lastLoad: { text: 'what goes into the last, smaller load; 0 where there is none', unit: 'L or kg' },
    together: { text: 'what goes into all loads', unit: 'L or kg' },
  },
  plain: (columns) => ({
    formula:
      'LET(partEach, TOCOL(parts, 1), stays, 1 - mixShrink, loose, finishedLitres / stays, ' +
      'fullCount, INT(ROUND(loose / mixerLitres, 9)), lastLoose, IF(ROUND(loose / mixerLitres - fullCount, 9) > 0, loose - fullCount * mixerLitres, 0), ' +
      // A blank cell is an empty text only where it is joined to one before TOCOL, which makes 0 of it.
      'partText, TOCOL(parts & ""), partNamed, FILTER(TOCOL(partNames & "") & IF(LEN(partText) > 0, "", ""), LEN(partText) > 0), ' +
      'partItem, IF(LEN(partNamed) > 0, partNamed, "component " & SEQUENCE(ROWS(partEach))), ' +
      'kgText, TOCOL(additiveKgM3 & "") & IF(LEN(TOCOL(additiveNames & "")) > 0, "", ""), ' +
      'addNamed, TOCOL(additiveNames & "") & IF(LEN(kgText) > 0, "", ""), given, LEN(kgText & addNamed) > 0, ' +
      'addCount, SUM(IF(given, 1, 0)), addText, FILTER(kgText, given, ""), addName, FILTER(addNamed, given, ""), ' +
      'addItem, IF(LEN(addName) > 0, addName, "additive " & SEQUENCE(ROWS(addName))), ' +
      'addEach, IF(LEN(addText) > 0, VALUE(0 & addText), 0) * stays / 1000, ' +
      'itemEach, IF(addCount > 0, VSTACK(partItem, addItem, "finished mix"), VSTACK(partItem, "finished mix")), ' +
      'perLoose, IF(addCount > 0, VSTACK(partEach / SUM(partEach), addEach, stays), VSTACK(partEach / SUM(partEach), stays)), ' +
      'isKg, (SEQUENCE(ROWS(itemEach)) > ROWS(partEach)) * (SEQUENCE(ROWS(itemEach)) < ROWS(itemEach)), ' +
      `VSTACK(${headingRow(columns)}, HSTACK(${inOrder(columns, {
        item: 'itemEach',
        unit: 'IF(isKg = 1, "kg", "L")',
        fullLoad: 'perLoose * mixerLitres',
        fullLoads: 'IF(perLoose < 0, 0, fullCount)',
        lastLoad: 'perLoose * lastLoose',
        together: 'perLoose * (mixerLitres * fullCount + lastLoose)',
      })})))`,
  }),
  examples: [
    {
      text: '2,500 L of peat and perlite, half and half, from a mixer of 1,000 L, with 3 kg of lime to the cubic metre',
      given: [2500, [1, 1], 1000, 0, [3], ['peat', 'perlite'], ['lime']],
      gives: [
        ['peat', 'L', 500, 2, 250, 1250],
        ['perlite', 'L', 500, 2, 250, 1250],
        ['lime', 'kg', 3, 2, 1.5, 7.5],
        ['finished mix', 'L', 1000, 2, 500, 2500],
      ],
      source: 'acquaah-4-11',
    },
    {
      text: '1,600 L of a mix that shrinks by a fifth are two loads of 1,000 L loose, of 800 L each when mixed',
      given: [1600, [3, 1, 1], 1000, 0.2, [5]],
      gives: [
        ['component 1', 'L', 600, 2, 0, 1200],
        ['component 2', 'L', 200, 2, 0, 400],
        ['component 3', 'L', 200, 2, 0, 400],
        ['additive 1', 'kg', 4, 2, 0, 8],
        ['finished mix', 'L', 800, 2, 0, 1600],
      ],
      source: 'rootmaker-faq',
    },
  ],
}
