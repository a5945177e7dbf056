import type { Words } from '../words'

const parts: Words['compare']['ways']['parts'] = {
  medium: {
    name: 'Substrat',
    text: 'das Substrat und das Gefäß, die Platte, das Beet oder die Matte, die es hält, über die Durchgänge, mit Bruch und Zins',
  },
  reuse: { name: 'Wiederverwendung', text: 'Waschen und Ergänzen vor jedem späteren Durchgang' },
  bench: { name: 'Tisch', text: 'Fläche und Wärme, bis die Stecklinge bewurzelt sind' },
  labour: { name: 'Arbeit', text: 'Stecken, Mischen, Füllen und andere Arbeit' },
  other: { name: 'Andere Kosten', text: 'was sonst für einen Steckling ausgegeben wird' },
  losses: { name: 'Verluste', text: 'was die verkauften Jungpflanzen für die verlorenen Stecklinge tragen' },
}

export const compare: Words['compare'] = {
  about: 'Die Zahlen dieser Diagramme sind die der Zellen.',
  noChartsInSheets:
    'Die Blätter hier nehmen keine eigenen Diagramme auf; in Excel setzt ein Knopf ein Diagramm ins Blatt.',
  unseen:
    'Einige Funktionen wurden seit dem Öffnen der Arbeitsmappe nicht berechnet, deshalb fehlen ihre Diagramme noch.',
  calculateAndRead: 'Berechnen und noch einmal lesen',
  readAgain: 'Die Arbeitsmappe noch einmal lesen',
  choice: (id, place) => `${id} in ${place}`,
  cellsToShow: (title) => `${title}: welche Zellen`,
  goToTheCell: 'Zur Zelle',
  goTo: (choice) => `Zu ${choice}`,
  putChart: 'Dieses Diagramm ins Blatt setzen',
  putChartOf: (choice) => `Das Diagramm von ${choice} ins Blatt setzen`,
  needsTable: (id) =>
    `Excel zeichnet eigene Diagramme aus Tabellen in Zellen: setzen Sie STICK.${id} allein in eine Zelle, und wählen Sie diese Zelle hier.`,
  chartPut: (sheet, free) => `Das Diagramm ist auf ${sheet}, bei ${free} oder darunter. Es folgt seinen Zellen.`,
  tablePut: (sheet, place) =>
    `Das Diagramm ist auf ${sheet}, neben den Zellen, die es zeichnet: ${place}. Beide folgen Ihren Zellen.`,
  noChart: (why) => `Zu dieser Zelle gibt es kein Diagramm. ${why}`,
  oneRoundOnly:
    'Jedes Verfahren dieser Zelle wird nur in einem Durchgang verwendet, also lässt sich nichts auf mehrere verteilen.',
  key: 'Legende',
  asTable: 'Als Tabelle zeigen',
  asChart: 'Als Diagramm zeigen',
  fromTo: (from, to) => `${from} bis ${to}`,
  perLiner: 'money per saleable liner',

  ways: {
    title: 'Bewurzelungsverfahren',
    hint: 'Setzen Sie STICK.COMPARE mit Ihren Bewurzelungsverfahren in ein Blatt, oder STICK.ROOTINGCOST für eines, um hier zu sehen, was eine verkaufsfähige Jungpflanze in jedem kostet und woraus sich das zusammensetzt.',
    chart: 'Kosten einer verkaufsfähigen Jungpflanze, Teil für Teil',
    way: 'Verfahren',
    perLiner: 'pro verkaufsfähige Jungpflanze',
    parts,
    partHeading: (part) => parts[part].name,
    partFrom: (part, headings) =>
      `${parts[part].name}: ${parts[part].text}${headings.length === 0 ? '' : `. Hier gezählt: ${headings.map((heading) => `„${heading}“`).join(', ')}`}`,
    costs: (way, amount) => `${way} kostet ${amount} für eine verkaufsfähige Jungpflanze.`,
    cheapest: (way, amount) => `${way} ist am günstigsten: ${amount} für eine verkaufsfähige Jungpflanze.`,
    largestPart: (part, amount) => `Der größte Teil davon ist „${part}“ mit ${amount}.`,
    next: (way, amount) => `Danach kommt ${way} mit ${amount}.`,
    dearest: (way, amount) => `Am teuersten ist ${way} mit ${amount}.`,
    oneNumber: (ways) =>
      `${ways.join(', ')}: Tisch und Arbeit stecken in „Andere Kosten“, weil die Arbeitsmappe sie nicht trennt. Um sie zu sehen, geben Sie die anderen Kosten als Zelle an, die nur andere addiert, etwa =B4+B5+B6, jede mit einer Überschrift daneben.`,
  },

  rounds: {
    title: 'Durchgang für Durchgang',
    hint: 'Setzen Sie STICK.BREAKEVEN, STICK.REUSELEDGER oder STICK.COMPARE in ein Blatt, um hier zu sehen, wie die Kosten mit jedem Durchgang fallen und ab welchem Einweg nicht mehr günstiger ist.',
    chart: 'Kosten nach der Zahl der Durchgänge',
    usedAgain: 'Mehrweg',
    singleUse: 'Einweg',
    anySingleUse: 'Einweg',
    compareWith: 'Vergleichen mit',
    cheapestSingleUse: (name) => `${name}: das günstigste Einwegverfahren`,
    usedOnce: (name) => `${name}: Einweg`,
    singleUseColumn: (name) => `${name}, Einweg`,
    tie: (once) => `der erste Durchgang, ab dem es nicht mehr kostet als ${once}`,
    round: (round) => `Durchgang ${round}`,
    rounds: 'Durchgänge',
    roundsServed: 'Durchgänge, in denen es verwendet wird',
    noDearerFrom: 'kostet nicht mehr ab',
    fromRound: (name, round) => `${name}: ab Durchgang ${round}`,
    notIn: (rounds) => `nicht in ${rounds} Durchgängen`,
    singleUseCosts: (amount) => `Einweg kostet ${amount}.`,
    cheapestCosts: (name, amount) => `${name}, das günstigste Einwegverfahren, kostet ${amount}.`,
    onceCosts: (name, amount) => `${name}, einmal verwendet, kostet ${amount}.`,
    oneRound: (name, amount) => `${name} kostet ${amount} bei 1 Durchgang`,
    course: (name, first, last, rounds) => `${name} geht von ${first} bei 1 Durchgang auf ${last} bei ${rounds}`,
    beats: (course, once, round) => `${course} und kostet ab Durchgang ${round} nicht mehr als ${once}.`,
    neverBeats: (course, once, rounds) =>
      `${course} und wird in seinen ${rounds} Durchgängen nicht so günstig wie ${once}.`,
  },

  swings: {
    title: 'Was ein Ergebnis bewegt',
    hint: 'Setzen Sie STICK.SWINGS mit einem niedrigsten, einem wahrscheinlichsten und einem höchsten Wert jedes Arguments in ein Blatt, um hier zu sehen, welches das Ergebnis am meisten bewegt.',
    chart: (id) => `Was ${id} am meisten bewegt`,
    atItsHigh: 'mit dem Argument auf seinem höchsten Wert',
    atItsLow: 'mit dem Argument auf seinem niedrigsten Wert',
    allAtLikely: 'mit jedem Argument auf seinem wahrscheinlichsten Wert',
    columns: {
      argument: 'Argument',
      low: 'niedrigster',
      high: 'höchster',
      atLow: 'beim niedrigsten',
      allLikely: 'mit wahrscheinlichsten Werten',
      atHigh: 'beim höchsten',
      swing: 'Ausschlag',
    },
    likely: (id, amount) => `Mit jedem Argument auf seinem wahrscheinlichsten Wert ergibt ${id} ${amount}.`,
    widest: (argument, atLow, atHigh) =>
      `${argument} bewegt es am meisten: ${atLow} beim niedrigsten Wert, ${atHigh} beim höchsten.`,
    still: (names) => `Was es nicht bewegt: ${names.join(', ')}.`,
  },

  odds: {
    title: 'Wie wahrscheinlich ein Ergebnis ist',
    hint: 'Setzen Sie STICK.ODDS mit einem niedrigsten, einem wahrscheinlichsten und einem höchsten Wert jedes Arguments in ein Blatt, um hier zu sehen, wie wahrscheinlich jedes Ergebnis ist.',
    chart: (id) => `Wie wahrscheinlich jedes Ergebnis von ${id} ist`,
    atOrBelow: 'Anteil der Ziehungen bei einem Ergebnis oder darunter',
    likelyLine: (amount) => `jedes Argument auf seinem wahrscheinlichsten Wert: ${amount}`,
    meanLine: (amount) => `Mittelwert der Ziehungen: ${amount}`,
    shareOfDraws: 'Anteil der Ziehungen',
    columns: { share: 'Anteil der Ziehungen', result: 'Ergebnis' },
    rows: { mean: 'Mittelwert', likely: 'mit wahrscheinlichsten Werten', withoutAnswer: 'Ziehungen ohne Antwort' },
    spread: (id, half, from, to) =>
      `Eine Ziehung nimmt einen zufälligen Wert jedes Arguments zwischen seinem niedrigsten und seinem höchsten. Die Hälfte der Ziehungen von ${id} liegt bei ${half} oder darunter, und neun von zehn liegen zwischen ${from} und ${to}.`,
    likely: (amount) => `Mit jedem Argument auf seinem wahrscheinlichsten Wert ist es ${amount}.`,
    withoutAnswer: (count) => `${count} Ziehungen haben keine Antwort und sind weggelassen.`,
  },
}
