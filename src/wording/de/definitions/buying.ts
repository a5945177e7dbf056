/** The texts of the functions of buying, each beside the first function that has it. */
export const buying: Readonly<Record<string, string>> = {
  // PACKPRICE
  'Price of a loose litre out of a bag, bale, brick or bulk load.':
    'Preis eines losen Liters aus Sack, Ballen, Ziegel oder loser Lieferung.',
  'The declared volume of a compressed pack is not loose litres: expansion tells how many loose litres one declared litre gives. Take it from the label or from your own test. Waste divides.':
    'Das angegebene Volumen eines gepressten Gebindes ist nicht in losen Litern gemeint: expansion sagt, wie viele lose Liter ein angegebener Liter ergibt. Nehmen Sie den Wert vom Etikett oder aus einem eigenen Versuch. Für den Verlust wird geteilt, nicht zugeschlagen.',
  'price of one pack': 'Preis eines Gebindes',
  'volume that the pack declares': 'Volumen, das auf dem Gebinde steht',
  'loose litres from one declared litre; 1 for loose bags':
    'lose Liter aus einem angegebenen Liter; 1 für lose Sackware',
  'delivery for one pack': 'Lieferung für ein Gebinde',
  'share of the loose medium that is lost in store and handling':
    'Anteil des losen Substrats, der im Lager und beim Umschlag verloren geht',
  'price of a usable loose litre': 'Preis eines nutzbaren losen Liters',
  'pack and delivery': 'Gebinde und Lieferung',
  'loose litres that reach the bench': 'lose Liter, die am Arbeitsplatz ankommen',
  'A bale of 107 L at 24.00 that opens to 1.9 times its volume':
    'Ein Ballen von 107 L zu 24,00, der auf das 1,9-Fache seines Volumens aufgeht',
  'A bag of 50 L at 9.00, 0.60 delivery, 4 % wasted': 'Ein Sack von 50 L zu 9,00, Lieferung 0,60, 4 % Verlust',

  // BAGS
  'Bags, bales or bricks to buy for the litres that are needed.':
    'Säcke, Ballen oder Ziegel, die für die benötigten Liter zu kaufen sind.',
  'The need and the stock are loose litres, the bag is its declared volume. Whole bags, in whole multiples of the order unit; 0 where the stock covers the need, else at least minimumBags.':
    'Bedarf und Bestand zählen in losen Litern, der Sack mit seinem angegebenen Volumen. Ganze Säcke, in ganzen Vielfachen der Bestelleinheit; 0, wo der Bestand den Bedarf deckt, sonst mindestens minimumBags.',
  'loose litres that are needed': 'benötigte lose Liter',
  'volume that one bag declares': 'Volumen, das auf einem Sack steht',
  'loose litres in stock': 'lose Liter im Bestand',
  'bags that are sold together: a layer, a pallet': 'Säcke, die zusammen verkauft werden: eine Lage, eine Palette',
  'least order, where anything is bought': 'kleinste Bestellung, wenn überhaupt gekauft wird',
  'bags to buy': 'zu kaufende Säcke',
  'what the stock does not cover': 'was der Bestand nicht deckt',
  'loose litres from one bag': 'lose Liter aus einem Sack',
  'bags that cover the shortfall': 'Säcke, die den Fehlbedarf decken',
  'at least the least order': 'mindestens die kleinste Bestellung',
  'up to a whole order unit': 'aufgerundet auf eine ganze Bestelleinheit',
  '0.3 m3 are 5 bags of 60 L': '0,3 m3 sind 5 Säcke zu 60 L',
  'Nine bags of 3 cubic feet for 100 square feet at 3 inches':
    'Neun Säcke zu 3 Kubikfuß für 100 Quadratfuß, 3 Zoll hoch',
  '2,000 L from bales of 107 L that open to 1.9 times, in layers of 4':
    '2.000 L aus Ballen von 107 L, die auf das 1,9-Fache aufgehen, in Lagen zu 4',

  // BUYPLAN
  'The cheapest order of whole bags that covers a need, from packs with price breaks, limits and suppliers, proven optimal.':
    'Die nachweislich günstigste Bestellung ganzer Säcke, die einen Bedarf deckt, aus Gebinden mit Staffelpreisen, Grenzen und Lieferanten.',
  'The need and the packs are loose litres: a compressed bale counts as its declared litres times its expansion. From breakQuantity on, the break price holds for every bag of its row. A delivery is paid once for each supplier used; rows without a name have one common supplier, and rows that name no delivery or 0 take that of their supplier. Cost holds the share of the delivery by litres, in cents, the cents left over to the largest remainders. Of equally cheap orders the one with less left over is taken, then the one with fewer bags, then the one with more bags of the earlier rows. A row leaves over what is not needed any more after the rows before it. What is short of the need by no more than binary dust covers it, as in BAGS.':
    'Bedarf und Gebinde zählen in losen Litern: ein gepresster Ballen mit seinen angegebenen Litern mal ihrer Ausdehnung. Ab der Staffelmenge gilt der Staffelpreis für jeden Sack der Zeile. Die Lieferung wird für jeden Lieferanten, bei dem bestellt wird, einmal bezahlt; Zeilen ohne Namen haben einen gemeinsamen Lieferanten, und Zeilen, die keine Lieferung oder 0 nennen, übernehmen die ihres Lieferanten. Die Kosten enthalten den Anteil an der Lieferung nach Litern, auf den Cent genau; übrige Cents gehen an die größten Reste. Von gleich günstigen Bestellungen gilt die, bei der weniger übrig bleibt, dann die mit weniger Säcken, dann die mit mehr Säcken der früheren Zeilen. Eine Zeile lässt übrig, was nach den Zeilen davor nicht mehr gebraucht wird. Was nur um binäre Rundungsreste unter dem Bedarf liegt, deckt ihn, wie in BAGS.',
  'the packs that can be bought': 'die erhältlichen Gebinde',
  'loose litres from one bag: its declared litres times its expansion':
    'lose Liter aus einem Sack: seine angegebenen Liter mal ihrer Ausdehnung',
  'price of one bag; what is yours already is no purchase':
    'Preis eines Sacks; was Ihnen schon gehört, ist kein Einkauf',
  'bags from which the break price holds for all of them; blank or 0 for no break':
    'Säcke, ab denen der Staffelpreis für alle gilt; leer oder 0 ohne Staffel',
  'price of every bag from that many on, not above packPrices; blank or 0 for no break':
    'Preis jedes Sacks ab dieser Menge, nicht höher als packPrices; leer oder 0 ohne Staffel',
  'bags that can be had; blank for no limit': 'erhältliche Säcke; leer ohne Grenze',
  'who sells the pack; blank for one common supplier':
    'wer das Gebinde verkauft; leer für einen gemeinsamen Lieferanten',
  'delivery of one order of that supplier, whatever its size':
    'Lieferung einer Bestellung bei diesem Lieferanten, unabhängig von der Menge',
  plan: 'Plan',
  'a row for each pack to buy, then the total': 'eine Zeile für jedes Gebinde, das zu kaufen ist, dann die Summe',
  pack: 'Gebinde',
  'the pack': 'das Gebinde',
  'loose litres in them': 'lose Liter darin',
  cost: 'Kosten',
  'their price and their share of the delivery': 'ihr Preis und ihr Anteil an der Lieferung',
  leftover: 'übrig',
  'litres that are not needed after the rows before': 'Liter, die nach den Zeilen davor nicht gebraucht werden',
  'price of the goods, without delivery': 'Preis der Ware, ohne Lieferung',
  'how far the price break is, with the other rows as they are':
    'wie weit es bis zur Staffel ist, wenn die anderen Zeilen bleiben, wie sie sind',
  'the best different order': 'die beste andere Bestellung',
  'loose litres in all': 'lose Liter insgesamt',
  'litres beyond the need': 'Liter über den Bedarf hinaus',
  'the least cost that covers the need': 'die geringsten Kosten, die den Bedarf decken',
  'delivery, paid once': 'Lieferung, einmal bezahlt',
  'Excel has no formula that weighs every order of whole bags. The check is for packs of different names and a plan that buys some: whether the bags cover the need, and the costs of the rows make the total.':
    'Excel hat keine Formel, die alle Bestellungen ganzer Säcke gegeneinander abwägt. Die Prüfung gilt für Gebinde mit verschiedenen Namen und einen Plan, der etwas kauft: ob die Säcke den Bedarf decken und die Kosten der Zeilen die Summe ergeben.',
  '195 L at 49.50 a bag, and 48.00 from 200 on: five more bags cost less':
    '195 L zu 49,50 pro Sack, und 48,00 ab 200: fünf Säcke mehr kosten weniger',
  'The large bag has the best price per litre, two small ones fill up for less than another large one':
    'Der große Sack hat den besten Preis pro Liter, zwei kleine füllen günstiger auf als ein weiterer großer',
  'Two suppliers: the bale is not worth a second delivery, and the delivery of 25 is shared by litres':
    'Zwei Lieferanten: der Ballen ist keine zweite Lieferung wert, und die Lieferung von 25 wird nach Litern verteilt',
}
