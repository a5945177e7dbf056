/** Problem -> German sentence. Names of arguments and functions stay as they stand in the formula. */
import type { CellFunction } from '../../core/definition/definition'
import { dayUnit, type Parameter } from '../../core/definition/parameter'
import type { Limit, Problem } from '../../core/definition/problem'
import type { DecimalMark } from '../../core/quantity/decimalMark'
import type { Dimension } from '../../core/quantity/units'
import {
  asPercent,
  hundredth,
  sentenceIn,
  shortened,
  unitList,
  type NoAnswerSentence,
  type NoAnswerWords,
  type RefusalWords,
  type Shown,
} from '../problemParts'

export function sentence(problem: Problem, definition: CellFunction, mark: DecimalMark = ','): string {
  return sentenceIn({ refusals, noAnswers, row: 'Zeile', typeSomething }, problem, definition, mark)
}

const dimensions: Readonly<Record<Dimension, string>> = {
  volume: 'ein Volumen',
  length: 'eine Länge',
  mass: 'eine Masse',
  massPerVolume: 'eine Masse je Volumen',
  volumePerMass: 'ein Volumen je Masse',
}

const markNames = { '.': 'einem Punkt', ',': 'einem Komma' } as const
const decimalMarks = { '.': 'einem Dezimalpunkt', ',': 'einem Dezimalkomma' } as const

const refusals: RefusalWords = {
  missing: (_, { name, parameter, type }) =>
    `${name} ist leer; hierher gehört: ${parameter?.text ?? 'ein Wert'}. ${type}`,
  emptyRange: (_, { name, type }) => `${name} hat nur leere Zellen. ${type}`,
  notNumber: ({ value }, { place, parameter, type }) =>
    `${place} nimmt ${takes(parameter)}; dort steht ${quoted(value)}. ${type}`,
  notText: ({ value }, { place, type, n }) => `${place} nimmt einen Text; dort steht ${n(value)}. ${type}`,
  logical: ({ value }, { place, parameter, type }) =>
    `${place} nimmt ${takes(parameter)}; dort steht ${value}. ${type}`,
  outsideCells: (_, { place, type }) => `${place} ist größer oder kleiner, als eine Zelle fassen kann. ${type}`,
  unclearComma: ({ value }, { place, n }) => {
    const [before = '', after = ''] = value.trim().split(',')
    return `${place} ist ${quoted(value)}, und das Komma kann ${before}${after} oder ${n(`${before}.${after}`)} heißen. Geben Sie es in der Zelle als Zahl ein, nicht als Text.`
  },
  notDay: ({ value }, { place, type }) => `${place} nimmt ein Datum; dort steht der Text ${quoted(value)}. ${type}`,
  beforeFirstDay: ({ other, days }, { name, n }) =>
    `${name} ergibt ${n(days)} Tage, und so lange vor ${other} liegt kein Tag, der hier gezählt wird. Prüfen Sie beides.`,
  tooManyWeeks: ({ got, most }, { name }) =>
    `Die Tabelle hätte ${got} Wochen; es gehen höchstens ${most}. Prüfen Sie die Jahre in ${name}, oder geben Sie firstDay und weeks an.`,
  severalMarks: ({ value }, { place, mark, n }) =>
    `${place} ist ${quoted(value)}, mit mehr als einem Punkt oder Komma. Geben Sie es mit ${markNames[mark]} vor den Nachkommastellen und ohne Zeichen zwischen den Tausendern ein, etwa ${n('1500.25')}.`,
  notPlainDigits: ({ value }, { place, mark, n }) =>
    `${place} ist ${quoted(value)}; eine Zahl wird aus den Ziffern 0 bis 9 und ${decimalMarks[mark]} gelesen, nicht aus Brüchen oder anderen Ziffern. Für die Hälfte geben Sie ${n('0.5')} ein.`,
  outOfRange: ({ value, limit }, { place, parameter, type, n }) =>
    `${place} muss ${limited(limit, parameter, n)} sein; dort steht ${withUnit(value, parameter, n)}. ${type}`,
  zeroOrBlank: (_, { place, parameter, type }) =>
    `${place} ist 0 oder eine leere Zelle; es muss größer als 0 sein${parameter?.whole === true ? ' und eine ganze Zahl' : ''}. ${type}`,
  percentTyped: ({ value }, { place, parameter, n }) => {
    const limit = parameter?.below === 1 ? 'kleiner als 1 (100 %)' : 'höchstens 1 (100 %)'
    return `${place} muss ${limit} sein; dort steht ${n(value)}. Für ${n(value)} Prozent geben Sie ${n(value)}% oder ${n(hundredth(value))} ein.`
  },
  unitUnknown: ({ unit }, { place, parameter }) =>
    `${place} hat ${quoted(unit)}; diese Einheit wird hier nicht gelesen. ${unitsOf(parameter)}`,
  unitAmbiguous: ({ unit, spellings }, { place }) =>
    `${place} hat ${quoted(unit)}, und das sind zwei verschiedene Einheiten. Geben Sie ${spellings.map(quoted).join(' oder ')} ein.`,
  unitOfOtherKind: ({ value, got, takes: wanted }, { place, type }) =>
    `${place} nimmt ${dimensions[wanted]}; dort steht ${quoted(value)}, ${dimensions[got]}. ${type}`,
  unitNotTaken: ({ value }, { place, parameter, type }) =>
    `${place} nimmt ${takes(parameter)} ohne andere Einheit; dort steht ${quoted(value)}. ${type}`,
  unitsDiffer: ({ from, fromKind, to, toKind }) =>
    `${quoted(from)} ist ${dimensions[fromKind]} und ${quoted(to)} ist ${dimensions[toKind]}. Geben Sie zwei Einheiten derselben Art ein, etwa "ft3" und "L".`,
  notOneCell: ({ rows, columns }, { name }) =>
    `${name} nimmt eine Zelle; angegeben ist ein Bereich von ${size(rows, columns)}. Geben Sie eine einzelne Zelle an.`,
  notOneLine: ({ rows, columns }, { name }) =>
    `${name} nimmt eine Zeile oder eine Spalte; angegeben ist ein Block von ${size(rows, columns)}. Geben Sie eine einzelne Zeile oder Spalte an.`,
  lengthsDiffer: ({ length, other, otherLength }, { name }) =>
    `${name} hat ${cells(length)} und ${other} hat ${cells(otherLength)}. Geben Sie für beide gleich lange Bereiche an.`,
  blankInRow: (_, { place, type }) =>
    `${place} ist leer, während andere Bereiche dort einen Wert haben. ${type} Oder leeren Sie die ganze Zeile.`,
  allZero: (_, { name, type }) => `${name} ergibt zusammen 0; mindestens ein Wert muss größer als 0 sein. ${type}`,
  sharesExclude: ({ other, value, limit }, { name, n }) =>
    `${name} muss kleiner als ${n(limit)} sein, weil ${other} angegeben ist; dort steht ${n(value)}. Geben Sie einen kleineren Wert ein, oder lassen Sie ihn weg.`,
  noSpreadAtOne: ({ other, value }, { name, n }) =>
    `${name} ist ${n(value)}, und ${other} von 1 verlieren in keiner Partie etwas, also gibt es keine Streuung. Lassen Sie ${name} weg, oder geben Sie die Anteile ein, die die Partien hatten.`,
  batchesOfOne: (_, { name }) =>
    `${name} ist in jeder Partie 1, und ein einzelner Steckling zeigt nicht, wie ähnlich die Stecklinge einer Partie sind. Geben Sie Partien von 2 Stecklingen oder mehr an.`,
  aboveOther: ({ value, other, otherValue }, { place, n }) =>
    `${place} ist ${n(value)} und ${other} daneben ist ${n(otherValue)}; es darf nicht darüber liegen. Prüfen Sie beide Zellen.`,
  givenTwice: ({ value }, { name }) =>
    `${name} hat ${value} zweimal. Geben Sie jedes nur einmal an, oder leeren Sie eine der beiden Zeilen.`,
  tooFewRows: ({ got, least }, { name }) =>
    `${name} hat ${rows(got)}; es braucht ${least} oder mehr. Geben Sie einen längeren Bereich an.`,
  tooManyRows: ({ got, most }, { name }) =>
    `${name} hat ${rows(got)}; es nimmt höchstens ${most}. Geben Sie einen kürzeren Bereich an.`,
  deliveriesDiffer: ({ value, other }, { place, n }) =>
    `${place} ist ${n(value)}, und eine andere Zeile desselben Lieferanten hat ${n(other)}. Eine Bestellung hat eine Lieferung: geben Sie in beiden Zeilen dasselbe an, oder leeren Sie eine davon.`,
  beyondExact: (_, { name }) =>
    `${name} hat so viele Stellen oder ist so groß, dass die Summen nicht mehr genau sind. Runden Sie auf weniger Nachkommastellen, etwa auf ganze Cent, oder prüfen Sie die Einheiten.`,
  needsOther: ({ other }, { place }) =>
    `${place} hat einen Wert, und ${other} daneben ist leer oder 0. Geben Sie beides an, oder leeren Sie beides.`,
  functionUnknown: ({ value, known }, { name }) =>
    `${name} ist ${quoted(value)}; diese Funktion lässt sich hier nicht verlangen. Geben Sie eine von diesen ein: ${known.join(', ')}.`,
  argumentUnknown: ({ value, of, known }, { place }) =>
    `${place} ist ${quoted(value)}; ${of} hat keine solche Angabe, die Zahlen nimmt. Geben Sie eine von diesen ein: ${known.join(', ')}.`,
  argumentTwice: ({ value, of }, { place }) =>
    `${place} ist noch einmal ${quoted(value)}, eine einzelne Zelle von ${of}. Leeren Sie eine der beiden Zeilen.`,
  tooManyDraws: ({ value, of, most }, { name, n }) =>
    `${name} darf für ${of} höchstens ${most} sein, weil die Antwort dort gesucht wird und länger dauert; dort steht ${n(value)}. Geben Sie ${most} oder weniger ein.`,
  argumentMissing: ({ missing, of }, { name }) =>
    `In ${name} fehlt ${missing}; ${of} braucht es. Fügen Sie dafür eine Zeile hinzu.`,
  functionRefused: ({ of, problems }, { place, definition, mark }) => {
    const asked = definition.over?.find(({ id }) => id === of)
    const why = asked === undefined ? '' : problems.map((problem) => sentence(problem, asked, mark)).join(' ')
    return `${of} lehnt ${place.replace(/,$/, '')} ab: ${why}`
  },
  tooManyArguments: ({ given, most }, { definition }) =>
    `STICK.${definition.id} nimmt höchstens ${most} Angaben; es sind ${given}. Entfernen Sie die letzte.`,
  resultOutsideCells: (_, { definition }) =>
    `Das Ergebnis (${definition.result.name}) wäre größer oder kleiner, als eine Zelle fassen kann. Prüfen Sie die Einheiten der Angaben.`,
}

const noAnswers: NoAnswerWords = {
  neverPays: ({ least, singleUse, raises }, n) => {
    const causes = raises.length === 0 ? ['die Anschaffung'] : raises.map((name) => causesOfReuse[name])
    const lower = raises.filter((name) => name !== 'yearlyInterest')
    const keep = causes.length === 1 ? 'hält' : 'halten'
    const level = least === singleUse ? `über ${n(least)} je Durchgang` : `bei ${n(least)} je Durchgang oder mehr`
    return (
      `Wiederverwendung holt nie auf: wie oft auch immer, ${listed(causes, 'und')} ${keep} sie ${level}, und Einweg kostet für ebenso viele Jungpflanzen ${n(singleUse)}. ` +
      `Senken Sie ${listed(lower.length === 0 ? ['firstCost'] : lower, 'oder')}, oder bleiben Sie bei Einweg.`
    )
  },
  paysTooLate: ({ mostRounds, level, singleUse }, n) =>
    `Wiederverwendung lohnt sich innerhalb von ${mostRounds} Durchgängen nicht: dann kostet sie ${n(level)} je Durchgang, und Einweg kostet für ebenso viele Jungpflanzen ${n(singleUse)}. Erhöhen Sie mostRounds, wenn es länger hält.`,
  cannotCover: ({ needed, most }, n) =>
    `Alles, was zu haben ist, gibt ${n(most)} L, und gebraucht werden ${n(needed)} L. Erhöhen Sie available, nehmen Sie ein Gebinde hinzu, oder senken Sie den Bedarf.`,
  searchGivenUp: ({ most }, n) =>
    `Es wird keine Bestellung genannt: nach ${n(most)} angefangenen Bestellungen war noch nicht bewiesen, welche die billigste ist. Lassen Sie Gebinde weg, die kaum billiger sind als andere, oder planen Sie einen kleineren Bedarf auf einmal.`,
  surplusPays: ({ surplus, cost }, n) =>
    `Jeder überzählige Steckling bringt im Mittel ${n(surplus)} und kostet ${n(cost)}, also würden sich mehr immer lohnen: Tisch und Markt setzen die Grenze. Prüfen Sie costPerCutting, senken Sie valuePerSurplusLiner, oder nehmen Sie CUTTINGS.`,
  functionHasNoAnswer: ({ of, parameter, row, why }, n) =>
    `${of} hat keine Antwort mit ${row === undefined ? parameter : `${parameter}, Zeile ${row}`}: ${(noAnswers[why.code] as NoAnswerSentence)(why, n)}`,
  noDrawHasAnswer: ({ of, draws }) =>
    `${of} hat mit keiner der ${draws} Ziehungen eine Antwort. Prüfen Sie lows und highs.`,
  paysBeyond: ({ most }, n) =>
    `Noch jenseits von ${n(most)} Stecklingen würde sich einer mehr lohnen. Prüfen Sie costPerCutting, stageRates und batchSpread.`,
  needsTooMany: ({ most }, n) =>
    `Selbst ${n(most)} Stecklinge erreichen diese Sicherheit nicht. Senken Sie confidence, oder prüfen Sie stageRates und batchSpread.`,
}

const causesOfReuse = {
  washCost: 'das Waschen',
  topUpShare: 'das Auffüllen',
  lossShare: 'der Verlust',
  yearlyInterest: 'der Zins',
} as const

function listed(words: readonly string[], last: 'und' | 'oder'): string {
  return words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1] ?? ''}`
}

function takes(parameter: Parameter | undefined): string {
  if (parameter?.unit === dayUnit) return 'ein Datum'
  if (parameter?.share === true) return 'einen Anteil'
  if (parameter?.dimension !== undefined) return `${dimensions[parameter.dimension]} in ${parameter.unit}`
  return 'eine Zahl'
}

function typeSomething(parameter: Parameter, example: string, n: Shown): string {
  if (parameter.takes === 'text') return `Geben Sie einen Text ein, etwa "${example}".`
  if (parameter.unit === dayUnit) return 'Geben Sie ein Datum ein, etwa 2026-03-02.'
  if (parameter.share === true) return `Geben Sie einen Anteil ein, etwa ${n(example)}, oder ${n(asPercent(example))}.`
  if (parameter.dimension !== undefined)
    return `Geben Sie eine Zahl in ${parameter.unit} ein, etwa ${n(example)}, oder Text mit einer Einheit, etwa "${n(example)} ${parameter.unit}".`
  return `Geben Sie ${parameter.whole === true ? 'eine ganze Zahl' : 'eine Zahl'} ein, etwa ${n(example)}.`
}

function limited(limit: Limit, parameter: Parameter | undefined, n: Shown): string {
  switch (limit.is) {
    case 'whole':
      return 'eine ganze Zahl'
    case 'atLeast':
      return `mindestens ${withUnit(String(limit.value), parameter, n)}`
    case 'above':
      return `größer als ${withUnit(String(limit.value), parameter, n)}`
    case 'atMost':
      return `höchstens ${withUnit(String(limit.value), parameter, n)}`
    case 'below':
      return `kleiner als ${withUnit(String(limit.value), parameter, n)}`
  }
}

function withUnit(value: string, parameter: Parameter | undefined, n: Shown): string {
  if (parameter?.share === true)
    return value === '0' || Math.abs(Number(value)) > 100
      ? n(value)
      : `${n(value)} (${n(asPercent(value)).replace('%', ' %')})`
  return parameter?.dimension === undefined ? n(value) : `${n(value)} ${parameter.unit}`
}

function unitsOf(parameter: Parameter | undefined): string {
  if (parameter?.dimension === undefined)
    return 'Geben Sie eine Einheit ein, etwa "L", "ft3", "mm", "in", "kg" oder "lb".'
  return `Geben Sie ${dimensions[parameter.dimension]} in ${parameter.unit} ein, oder mit ${unitList[parameter.dimension].replace(' or ', ' oder ')}.`
}

function quoted(text: string): string {
  return `"${shortened(text)}"`
}

function size(rows: number, columns: number): string {
  return `${rows} mal ${columns} Zellen`
}

function rows(length: number): string {
  return length === 1 ? '1 Zeile' : `${length} Zeilen`
}

function cells(length: number): string {
  return length === 1 ? '1 Zelle' : `${length} Zellen`
}
