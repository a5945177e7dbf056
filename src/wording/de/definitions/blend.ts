/** The texts of the functions of blends, each beside the first function that has it. */
export const blend: Readonly<Record<string, string>> = {
  // BLENDCOST
  'Cost of a litre of finished mix from its parts and their prices.':
    'Kosten eines Liters fertiger Mischung aus ihren Teilen und deren Preisen.',
  'Prices are per loose litre (see PACKPRICE). mixShrink is the share of the summed loose volumes that vanishes when they are mixed, since fine grains fill the pores of coarse ones; measure it on a test mix. Shrink divides.':
    'Die Preise gelten pro losen Liter (siehe PACKPRICE). mixShrink ist der Mischungsschwund: der Anteil der zusammengezählten losen Volumen, der beim Mischen verschwindet, weil feine Körner die Poren der groben füllen; messen Sie ihn an einer Probemischung. Für den Schwund wird geteilt, nicht zugeschlagen.',
  'parts by volume, one cell a component': 'Volumenteile, eine Zelle pro Bestandteil',
  'price of a loose litre of each component': 'Preis eines losen Liters jedes Bestandteils',
  'share of the summed volumes that vanishes in mixing':
    'Mischungsschwund: Anteil der zusammengezählten Volumen, der beim Mischen verschwindet',
  'lime, wetting agent, starter feed and mixing labour for a cubic metre of finished mix':
    'Kalk, Netzmittel, Startdünger und Mischarbeit für einen Kubikmeter fertige Mischung',
  'cost of a litre of finished mix': 'Kosten eines Liters fertiger Mischung',
  'what the parts cost, one litre to the part': 'was die Teile kosten, ein Liter pro Teil',
  'finished mix from those parts': 'fertige Mischung aus diesen Teilen',
  'components and additions for a finished litre': 'Bestandteile und Zusätze für einen fertigen Liter',
  'Equal parts at 0.12 and 0.18, a tenth lost in mixing':
    'Gleiche Teile zu 0,12 und 0,18, ein Zehntel schwindet beim Mischen',
  'Three, one and one that make about four: the sum shrinks by a fifth':
    'Drei, eins und eins, die etwa vier ergeben: die Summe schwindet um ein Fünftel',

  // BLENDPARTS
  'Loose litres of each component for an amount of finished mix.':
    'Lose Liter jedes Bestandteils für eine Menge fertiger Mischung.',
  'Spills in the shape of parts; a blank part takes 0 litres. With mixShrink the components add up to more than the finished mix.':
    'Das Ergebnis hat die Form von parts; ein leerer Teil bekommt 0 Liter. Mit mixShrink ergeben die Bestandteile zusammen mehr als die fertige Mischung.',
  'finished mix that is needed': 'benötigte fertige Mischung',
  'loose litres of each component': 'lose Liter jedes Bestandteils',
  'all components together, before mixing': 'alle Bestandteile zusammen, vor dem Mischen',
  'each component by its parts': 'jeder Bestandteil nach seinen Teilen',
  '27 cubic feet of mix from 32 of ingredients, half and half':
    '27 Kubikfuß Mischung aus 32 Kubikfuß Zutaten, halb und halb',

  // BLENDWEIGHT
  'Weight of a litre of finished mix, dry or watered.':
    'Gewicht eines Liters fertiger Mischung, trocken oder nach dem Gießen.',
  'Weight adds up from the parts; air space, water capacity and pH do not, and are not computed. waterHeldShare is water as a share of the finished volume, at 1 kg to the litre.':
    'Das Gewicht ergibt sich aus den Teilen; Luftraum, Wasserkapazität und pH-Wert tun das nicht und werden nicht berechnet. waterHeldShare ist das Wasser als Anteil des fertigen Volumens, 1 kg pro Liter.',
  'loose bulk density of each dry component': 'lose Schüttdichte jedes trockenen Bestandteils',
  'water held after watering, as a share of the finished volume':
    'Wasser, das nach dem Gießen gehalten wird, als Anteil des fertigen Volumens',
  weight: 'Gewicht',
  'weight of a litre of finished mix': 'Gewicht eines Liters fertiger Mischung',
  'what the parts weigh, one litre to the part': 'was die Teile wiegen, ein Liter pro Teil',
  'dry weight and the water of a finished litre': 'Trockengewicht und das Wasser eines fertigen Liters',
  'Dry sand of 1,600 kg/m3 that holds a third of its volume in water':
    'Trockener Sand mit 1.600 kg/m3, der ein Drittel seines Volumens an Wasser hält',
  'Equal parts of 100 and 110 kg/m3, a tenth lost in mixing':
    'Gleiche Teile mit 100 und 110 kg/m3, ein Zehntel schwindet beim Mischen',

  // MIXLOADS
  'What goes into each mixer load of a blend: litres of each component, and kg of lime, feed and wetting agent.':
    'Was in jede Mischerladung einer Mischung kommt: Liter jedes Bestandteils, und kg Kalk, Dünger und Netzmittel.',
  'The mixer takes loose litres: all components together as they are filled in, before they shrink; where its maker states finished mix, divide that by 1 - mixShrink. Additives are weighed for the finished mix, not for the summed components. All loads are full but the last, which is as much smaller as it comes out. In each row full load x full loads + last load is together. Without names the components and additives are numbered as they come.':
    'Der Mischer nimmt lose Liter: alle Bestandteile zusammen, wie sie eingefüllt werden, vor dem Schwund; wo der Hersteller fertige Mischung angibt, teilen Sie diese durch 1 - mixShrink. Zusätze werden für die fertige Mischung gewogen, nicht für die zusammengezählten Bestandteile. Alle Ladungen sind voll bis auf die letzte, die so viel kleiner ist, wie es sich ergibt. In jeder Zeile ist volle Ladung x volle Ladungen + letzte Ladung = zusammen. Ohne Namen werden Bestandteile und Zusätze der Reihe nach gezählt.',
  'loose litres that the mixer takes at a time': 'lose Liter, die der Mischer auf einmal nimmt',
  'weight of each additive for a cubic metre of finished mix':
    'Gewicht jedes Zusatzes für einen Kubikmeter fertige Mischung',
  'the names of the components': 'die Namen der Bestandteile',
  'the names of the additives': 'die Namen der Zusätze',
  loads: 'Ladungen',
  'a row for each component and additive, then the finished mix':
    'eine Zeile für jeden Bestandteil und Zusatz, dann die fertige Mischung',
  item: 'was',
  'a component, an additive or the finished mix': 'ein Bestandteil, ein Zusatz oder die fertige Mischung',
  unit: 'Einheit',
  'what its amounts are in': 'worin seine Mengen angegeben sind',
  'full load': 'volle Ladung',
  'what goes into a full load': 'was in eine volle Ladung kommt',
  'full loads': 'volle Ladungen',
  'full loads to mix': 'zu mischende volle Ladungen',
  'last load': 'letzte Ladung',
  'what goes into the last, smaller load; 0 where there is none':
    'was in die letzte, kleinere Ladung kommt; 0, wo es keine gibt',
  together: 'zusammen',
  'what goes into all loads': 'was in alle Ladungen kommt',
  'loose litres of the last, smaller load': 'lose Liter der letzten, kleineren Ladung',
  'what goes into all loads, and the finished mix': 'was in alle Ladungen kommt, und die fertige Mischung',
  '2,500 L of peat and perlite, half and half, from a mixer of 1,000 L, with 3 kg of lime to the cubic metre':
    '2.500 L Torf und Perlite, halb und halb, aus einem Mischer von 1.000 L, mit 3 kg Kalk pro Kubikmeter',
  '1,600 L of a mix that shrinks by a fifth are two loads of 1,000 L loose, of 800 L each when mixed':
    '1.600 L einer Mischung, die um ein Fünftel schwindet, sind zwei Ladungen von 1.000 L lose, gemischt je 800 L',
}
