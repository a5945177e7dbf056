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
}
