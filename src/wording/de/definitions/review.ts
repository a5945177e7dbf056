/** The texts of the functions of comparing and reviewing, each beside the first function that has it. */
export const review: Readonly<Record<string, string>> = {
  // COMPARE
  'Rooting methods side by side per saleable liner, the cheapest first.':
    'Bewurzelungsverfahren nebeneinander, pro verkaufsfähige Jungpflanze, das günstigste zuerst.',
  'The level cost is the average cost per round with interest, as in REUSECOST, per unit in use; cuttingsPerRound are the cuttings in one such unit, so a unit lost takes its cuttings along. Per cutting adds the other costs, and per saleable liner divides by the yield, as ROOTINGCOST does. Equal costs keep the given order. Cash before the first sale is the whole first round of one unit: firstCost and the other costs of its cuttings; to compare it, and the level costs, let a unit of each method take equally many cuttings. A method with 1 round is single use; a reusable one beats it from the least number of its rounds at which its cost per saleable liner is no higher than that of the cheapest single use, an exact tie counting.':
    'Die gleichmäßigen Kosten sind die mittleren Kosten pro Durchgang mit Zins, wie in REUSECOST, pro genutzte Einheit; cuttingsPerRound sind die Stecklinge in einer solchen Einheit, eine verlorene Einheit nimmt also ihre Stecklinge mit. Pro Steckling kommen die übrigen Kosten hinzu, und pro verkaufsfähige Jungpflanze wird durch die Ausbeute geteilt, wie in ROOTINGCOST. Bei gleichen Kosten bleibt die gegebene Reihenfolge. Der Geldbedarf vor dem ersten Verkauf ist der ganze erste Durchgang einer Einheit: firstCost und die übrigen Kosten ihrer Stecklinge; um ihn und die gleichmäßigen Kosten zu vergleichen, lassen Sie eine Einheit jedes Verfahrens gleich viele Stecklinge aufnehmen. Ein Verfahren mit 1 Durchgang ist Einweg; Mehrweg schlägt es ab der kleinsten Zahl seiner Durchgänge, bei der seine Kosten pro verkaufsfähige Jungpflanze nicht höher sind als die des günstigsten Einwegverfahrens; genauer Gleichstand zählt.',
  'the rooting methods': 'die Bewurzelungsverfahren',
  'what one unit costs new: the medium, tray or bed of one round':
    'was eine Einheit neu kostet: Substrat, Platte oder Beet eines Durchgangs',
  'rounds it is used, the first one included; 1 for single use':
    'Durchgänge, in denen sie verwendet wird, der erste mitgezählt; 1 für Einweg',
  'cuttings that one unit takes in a round': 'Stecklinge, die eine Einheit in einem Durchgang aufnimmt',
  'share of the first cost that is topped up before each later round':
    'Anteil der Anschaffungskosten, der vor jedem späteren Durchgang ergänzt wird',
  'all else in every round: cutting, hormone, labour, bench':
    'alles Übrige in jedem Durchgang: Steckling, Bewurzelungshormon, Arbeit, Stellfläche',
  comparison: 'Vergleich',
  'a row for each method, the cheapest per saleable liner first':
    'eine Zeile für jedes Verfahren, das günstigste pro verkaufsfähige Jungpflanze zuerst',
  name: 'Name',
  'the rooting method': 'das Bewurzelungsverfahren',
  'level cost per round': 'gleichmäßige Kosten pro Durchgang',
  'first cost, washing, topping up, loss and end value over the rounds':
    'Anschaffung, Waschen, Ergänzen, Verlust und Restwert über die Durchgänge',
  'per cutting': 'pro Steckling',
  'that and all other costs, per cutting': 'das und alle übrigen Kosten, pro Steckling',
  'per saleable liner': 'pro verkaufsfähige Jungpflanze',
  'the same, borne by the cuttings that become saleable':
    'dasselbe, getragen von den Stecklingen, die verkaufsfähig werden',
  'cash before the first sale': 'Geldbedarf vor dem ersten Verkauf',
  'first cost and other costs of the first round': 'Anschaffung und übrige Kosten des ersten Durchgangs',
  'rounds until it beats single use': 'Durchgänge, bis es Einweg schlägt',
  'the round from which it costs no more than the cheapest single use, or why there is none':
    'der Durchgang, ab dem es nicht mehr kostet als das günstigste Einwegverfahren, oder warum es keinen gibt',
  'level cost per round, in the given order': 'gleichmäßige Kosten pro Durchgang, in der gegebenen Reihenfolge',
  'cost per cutting': 'Kosten pro Steckling',
  'the cheapest single use per saleable liner': 'das günstigste Einwegverfahren pro verkaufsfähige Jungpflanze',
  'cash before the first sale, in the given order': 'Geldbedarf vor dem ersten Verkauf, in der gegebenen Reihenfolge',
  'rounds until it beats single use, in the given order':
    'Durchgänge, bis es Einweg schlägt, in der gegebenen Reihenfolge',
  'the methods, cheapest per saleable liner first':
    'die Verfahren, das günstigste pro verkaufsfähige Jungpflanze zuerst',
  'A plug used once beside a tray of 50 that is washed and used six times: in round 5 the tray costs exactly as much, and then less':
    'Ein einmal verwendeter Plug neben einer Platte zu 50, die gewaschen und sechsmal verwendet wird: in Durchgang 5 kostet die Platte genau gleich viel, danach weniger',
  'A bed of 300, topped up by a tenth and sold for 30 after three rounds, beside two that are used once':
    'Ein Beet zu 300, um ein Zehntel ergänzt und nach drei Durchgängen für 30 verkauft, neben zwei Einwegverfahren',

  // SWINGS
  'What each uncertain argument of another function does to its result, widest first: the table of a tornado chart.':
    'Was jedes unsichere Argument einer anderen Funktion an deren Ergebnis ändert, das mit dem größten Ausschlag zuerst: die Tabelle eines Tornadodiagramms.',
  'Each argument alone goes to its low and to its high while the others stay at their likely values, so what moves together is not shown. The swing is the difference of those two results; what happens between the two ends does not count. Equal swings keep the order of the rows. Arguments that are not named take their defaults.':
    'Jedes Argument geht für sich allein auf seinen niedrigsten und seinen höchsten Wert, während die anderen auf ihrem wahrscheinlichsten bleiben; was sich gemeinsam bewegt, zeigt sich also nicht. Der Ausschlag ist der Unterschied dieser beiden Ergebnisse; was zwischen den beiden Enden geschieht, zählt nicht. Bei gleichem Ausschlag bleibt die Reihenfolge der Zeilen. Für Argumente, die nicht genannt sind, gelten die Vorgabewerte.',
  'the function to ask for by name; any that takes numbers and gives one':
    'die gefragte Funktion, mit Namen; jede, die Zahlen nimmt und eine Zahl ergibt',
  'its arguments by name, one a row; the same range again is its next cell, so stageRates three times are three stages':
    'ihre Argumente mit Namen, eines pro Zeile; derselbe Bereich noch einmal ist seine nächste Zelle, dreimal stageRates sind also drei Stufen',
  'the least that the argument can be': 'der kleinste Wert, den das Argument haben kann',
  'what it most likely is; where it is certain, all three are the same':
    'sein wahrscheinlichster Wert; wo er sicher ist, sind alle drei gleich',
  'the most that it can be': 'der größte Wert, den es haben kann',
  swings: 'Ausschläge',
  'one row for each argument, widest swing first': 'eine Zeile für jedes Argument, der größte Ausschlag zuerst',
  argument: 'Argument',
  'the argument that moves': 'das bewegte Argument',
  low: 'niedrig',
  'its low': 'sein niedrigster Wert',
  high: 'hoch',
  'its high': 'sein höchster Wert',
  'at low': 'beim niedrigsten Wert',
  'the result with this argument at its low': 'das Ergebnis mit diesem Argument auf seinem niedrigsten Wert',
  'all likely': 'mit wahrscheinlichsten Werten',
  'the result with every argument at its likely value, the middle of the chart':
    'das Ergebnis mit jedem Argument auf seinem wahrscheinlichsten Wert, die Mitte des Diagramms',
  'at high': 'beim höchsten Wert',
  'the result with this argument at its high': 'das Ergebnis mit diesem Argument auf seinem höchsten Wert',
  swing: 'Ausschlag',
  'the difference between the two ends': 'der Unterschied zwischen den beiden Enden',
  'the arguments in the order of their swings': 'die Argumente in der Reihenfolge ihrer Ausschläge',
  'the result with this argument alone at its low':
    'das Ergebnis, wenn allein dieses Argument auf seinem niedrigsten Wert ist',
  'the result with this argument alone at its high':
    'das Ergebnis, wenn allein dieses Argument auf seinem höchsten Wert ist',
  'Excel has no formula that computes a function by its name. Each end is one call of that function, with one argument at its low or high and the others at their likely values; its own plain formula checks it.':
    'Excel hat keine Formel, die eine Funktion nach ihrem Namen aufruft. Jedes Ende ist ein Aufruf dieser Funktion mit einem Argument auf seinem niedrigsten oder höchsten Wert und den anderen auf ihrem wahrscheinlichsten; ihre eigene reine Excel-Formel prüft ihn.',
  'Cost of the medium of a cutting, 50 to 80 mL at 0.10 to 0.20 a litre':
    'Kosten des Substrats eines Stecklings, 50 bis 80 mL zu 0,10 bis 0,20 pro Liter',
  'Cost of a liner with two stages of losses: the same range twice is two cells of it':
    'Kosten einer Jungpflanze mit zwei Stufen von Ausfällen: derselbe Bereich zweimal sind zwei seiner Zellen',

  // ODDS
  'How likely each result of another function is, when its arguments may lie anywhere between a low and a high.':
    'Wie wahrscheinlich jedes Ergebnis einer anderen Funktion ist, wenn ihre Argumente irgendwo zwischen einem niedrigsten und einem höchsten Wert liegen können.',
  'A draw takes a random value of each argument between its low and its high, most often near its likely one (a triangular distribution), and calculates the result. Each argument is drawn by itself: what moves together is not shown. Whole arguments are rounded to the nearest whole number. A draw with which the function has no answer is counted in the last row, and the other rows are of the others. A result below which a given share of the draws lies is a percentile; between two draws it is interpolated, as by PERCENTILE.INC. The draws come from the Mersenne Twister MT19937, the result is rounded to 10 significant digits, and the same seed and rows give the same numbers on every machine; another seed shows how far they depend on chance.':
    'Eine Ziehung nimmt einen zufälligen Wert jedes Arguments zwischen seinem niedrigsten und seinem höchsten, am häufigsten nahe dem wahrscheinlichsten (eine Dreiecksverteilung), und rechnet das Ergebnis aus. Jedes Argument wird für sich gezogen: was sich gemeinsam bewegt, ist nicht abgebildet. Ganzzahlige Argumente werden auf die nächste ganze Zahl gerundet. Eine Ziehung, mit der die Funktion keine Antwort hat, wird in der letzten Zeile gezählt; die anderen Zeilen gelten für die übrigen. Ein Ergebnis, unter dem ein gegebener Anteil der Ziehungen liegt, ist ein Perzentil; zwischen zwei Ziehungen wird es interpoliert wie von PERCENTILE.INC. Die Ziehungen kommen aus dem Mersenne-Twister MT19937, das Ergebnis wird auf 10 gültige Ziffern gerundet, und derselbe Startwert und dieselben Zeilen ergeben auf jedem Rechner dieselben Zahlen; ein anderer Startwert zeigt, wie weit sie vom Zufall abhängen.',
  'how many draws of random values are made; at most 1,000 for functions that search, such as CUTTINGS and BREAKEVEN':
    'wie viele Ziehungen von Zufallswerten gemacht werden; höchstens 1.000 bei Funktionen, die suchen, wie CUTTINGS und BREAKEVEN',
  'the number from which the random values start: the same one gives the same draws':
    'die Zahl, mit der die Zufallswerte beginnen: dieselbe gibt dieselben Ziehungen',
  odds: 'Wahrscheinlichkeiten',
  'the result below which each share of the draws lies, then the mean, what it is with all likely values, and how many draws have no answer':
    'das Ergebnis, unter dem jeder Anteil der Ziehungen liegt, dann der Mittelwert, das Ergebnis mit den wahrscheinlichsten Werten und die Zahl der Ziehungen ohne Antwort',
  'share of draws': 'Anteil der Ziehungen',
  'which share of the draws that have an answer lies at or below the result beside it, 0 for the least and 1 for the largest; or what the last rows hold':
    'welcher Anteil der Ziehungen mit Antwort bei dem Ergebnis daneben oder darunter liegt, 0 für das kleinste und 1 für das größte; oder was die letzten Zeilen enthalten',
  result: 'Ergebnis',
  'the result of the function, and in the last row a number of draws':
    'das Ergebnis der Funktion, und in der letzten Zeile eine Zahl von Ziehungen',
  'the arguments that are drawn': 'die Argumente, die gezogen werden',
  'the first draw of each, so that one draw can be followed by hand':
    'die erste Ziehung für jedes, damit sich eine Ziehung von Hand nachrechnen lässt',
  'draws with which the function has no answer': 'Ziehungen, mit denen die Funktion keine Antwort hat',
  'mean of the draws that have an answer': 'Mittelwert der Ziehungen mit Antwort',
  'results below which 0, 1, 5, 10, 25, 50, 75, 90, 95, 99, 100 % of these draws lie':
    'Ergebnisse, unter denen 0, 1, 5, 10, 25, 50, 75, 90, 95, 99, 100 % dieser Ziehungen liegen',
  'RAND of Excel cannot be given a seed, so no plain formula makes these draws again. SWINGS shows the two ends of each argument without any draws.':
    'RAND von Excel nimmt keinen Startwert, also kann keine reine Excel-Formel diese Ziehungen wiederholen. SWINGS zeigt die beiden Enden jedes Arguments ohne Ziehungen.',
  'Cost of a liner where the cost of a cutting and both stages of losses are uncertain':
    'Kosten einer Jungpflanze, wenn die Kosten eines Stecklings und beide Verluststufen unsicher sind',
  'Where nothing is uncertain, every draw is the same': 'Wo nichts unsicher ist, ist jede Ziehung gleich',

  // ONTRACK
  'Whether the batches that grow will give the liners promised, and how many cuttings to stick again if not.':
    'Ob die wachsenden Partien die zugesagten Jungpflanzen geben, und wie viele Stecklinge sonst nachzustecken sind.',
  'Each batch survives by itself: the number of liners is the sum of binomial numbers, one a batch, with the rate that is left to it, or of beta-binomial ones with batchSpread; for one batch that is the chance of CUTTINGS. Count what lives now, not what was stuck; a rate of 1 is for liners that are ready. The further cuttings are one batch more, with all its stages before it. Without a confidence they are enough on average only; with one, they are the least with which the chance of all together reaches it. Whether there is time for them, STICKDAY tells.':
    'Jede Partie überlebt für sich: die Zahl der Jungpflanzen ist die Summe binomialer Zahlen, eine pro Partie, mit der Rate, die noch vor ihr liegt, oder mit batchSpread die Summe betabinomialer; bei einer Partie ist das die Wahrscheinlichkeit von CUTTINGS. Zählen Sie, was jetzt lebt, nicht, was gesteckt wurde; eine Rate von 1 gilt für fertige Jungpflanzen. Nachgestecktes ist eine Partie mehr, die alle Stufen noch vor sich hat. Ohne Sicherheit reicht es nur im Mittel; mit einer ist es die kleinste Zahl, mit der alles zusammen sie erreicht. Ob die Zeit dafür reicht, sagt STICKDAY.',
  'what lives of each batch now, one cell a batch': 'was von jeder Partie jetzt lebt, eine Zelle pro Partie',
  'the share of these that will still become liners, one for all batches or one for each':
    'der Anteil davon, aus dem noch Jungpflanzen werden, einer für alle Partien oder einer für jede',
  'how far those rates differ from batch to batch (their standard deviation, from BATCHSPREAD)':
    'wie weit diese Raten von Partie zu Partie abweichen (ihre Standardabweichung, aus BATCHSPREAD)',
  'the share of further cuttings that survives each stage, one cell a stage':
    'der Anteil der nachgesteckten Stecklinge, der jede Stufe übersteht, eine Zelle pro Stufe',
  outlook: 'Ausblick',
  'one row: where the batches lead, and what is lacking': 'eine Zeile: wohin die Partien führen, und was fehlt',
  'expected liners': 'erwartete Jungpflanzen',
  'liners that come of all batches on average': 'Jungpflanzen, die im Mittel aus allen Partien werden',
  'chance of having enough': 'Wahrscheinlichkeit, dass es reicht',
  'the chance of at least the liners promised':
    'die Wahrscheinlichkeit, mindestens die zugesagten Jungpflanzen zu haben',
  'further cuttings': 'nachzusteckende Stecklinge',
  'cuttings to stick again, not known without newRates; 0 where what grows is enough':
    'Stecklinge, die nachzustecken sind, ohne newRates nicht bekannt; 0, wo reicht, was wächst',
  'share of the further cuttings that becomes a saleable liner':
    'Anteil der nachgesteckten Stecklinge, aus denen verkaufsfähige Jungpflanzen werden',
  'cuttings to stick again': 'Stecklinge, die nachzustecken sind',
  'Excel has no formula for the sum of batches with rates of their own, nor for the number of trials. The check is for the liners expected and, where there is one batch without batchSpread, for its chance.':
    'Excel hat keine Formel für die Summe von Partien mit eigenen Raten und keine für die Zahl der Versuche. Die Prüfung gilt für die erwarteten Jungpflanzen und, bei einer Partie ohne batchSpread, für deren Wahrscheinlichkeit.',
  '60 cuttings that live at 90 % are 54 liners on average, and 51 come of them with a chance of 93 %':
    '60 lebende Stecklinge bei 90 % ergeben im Mittel 54 Jungpflanzen, und 51 werden es mit einer Wahrscheinlichkeit von 93 %',
  'Two batches of 2 and 1 at one half, for 3 liners: an eighth, and 3 further cuttings on average':
    'Zwei Partien zu 2 und 1 bei ein halb, für 3 Jungpflanzen: ein Achtel, und im Mittel 3 nachzusteckende Stecklinge',

  // VARIANCE
  'Splits what was spent beyond the standard into price and usage.':
    'Teilt, was über den Standard hinaus ausgegeben wurde, in Preis und Verbrauch auf.',
  'Positive means that more was spent than the standard allows, which is adverse; negative is favourable. The price is compared at the actual quantity and the quantity at the standard price, so the two add up exactly to actual quantity x actual price less standard quantity x standard price. The standard quantity is the one for what was really produced. Nothing is rounded.':
    'Positiv heißt, dass mehr ausgegeben wurde, als der Standard vorsieht, also ungünstig; negativ ist günstig. Der Preis wird bei der Ist-Menge verglichen und die Menge beim Standardpreis; so ergeben die beiden genau Ist-Menge x Ist-Preis minus Standardmenge x Standardpreis. Die Standardmenge ist die für das, was wirklich erzeugt wurde. Nichts wird gerundet.',
  'quantity that the standard allows for what was produced': 'Menge, die der Standard für das Erzeugte vorsieht',
  'price that the standard allows; negative where one is paid to take it':
    'Preis, den der Standard vorsieht; negativ, wo man für die Abnahme bezahlt wird',
  'quantity that was used': 'verbrauchte Menge',
  'price that was paid; negative where one was paid to take it':
    'bezahlter Preis; negativ, wo man für die Abnahme bezahlt wurde',
  variance: 'Abweichung',
  'a row each for price, usage and their total': 'je eine Zeile für Preis, Verbrauch und ihre Summe',
  'price, usage or total': 'Preis (price), Verbrauch (usage) oder Summe (total)',
  amount: 'Betrag',
  'what was spent beyond the standard': 'was über den Standard hinaus ausgegeben wurde',
  reads: 'gilt als',
  'favourable, adverse or none': 'günstig (favourable), ungünstig (adverse) oder keine Abweichung (none)',
  'what the standard allows': 'was der Standard vorsieht',
  'what was spent': 'was ausgegeben wurde',
  'price variance': 'Preisabweichung',
  'usage variance': 'Verbrauchsabweichung',
  'both, which is actualCost - standardCost': 'beide zusammen, also actualCost - standardCost',
  '24 kg at 4.50 used where the standard is 20 kg at 4': '24 kg zu 4,50 verbraucht, wo 20 kg zu 4 der Standard sind',
  'A lower price paid for with more waste: 2,200 kg at 4.50 where the standard is 2,000 kg at 5':
    'Ein niedrigerer Preis, erkauft mit mehr Abfall: 2.200 kg zu 4,50, wo 2.000 kg zu 5 der Standard sind',

  // STOCKPLAN
  'When to order how much over the season, so that ordering, goods and holding stock together cost least.':
    'Wann in der Saison wie viel zu bestellen ist, damit Bestellen, Ware und Lagerhaltung zusammen am wenigsten kosten.',
  "An order arrives at the start of its period and pays that period's order cost and unit price. Holding is charged on the stock at the end of each period, onHand included, which is used up first and is worth nothing at the end. Equally cheap plans: the one with fewer orders, then the one whose last order is later, and so on backwards. Type 0 for a period without a need, since a blank cell is no period. The total row adds the stocks up, as holding is charged on their sum.":
    'Eine Bestellung trifft am Anfang ihrer Periode ein und zahlt die Bestellkosten und den Stückpreis dieser Periode. Lagerkosten fallen auf den Bestand am Ende jeder Periode an, onHand eingerechnet, das zuerst verbraucht wird und am Ende nichts wert ist. Von gleich günstigen Plänen gilt der mit weniger Bestellungen, dann der mit der späteren letzten Bestellung, und so weiter rückwärts. Geben Sie 0 für eine Periode ohne Bedarf ein, denn eine leere Zelle ist keine Periode. Die Summenzeile zählt die Bestände zusammen, weil die Lagerkosten auf ihre Summe anfallen.',
  'what each period needs, in any one unit': 'was jede Periode braucht, in einer beliebigen Einheit',
  'cost of placing and receiving an order, one for all periods or one for each':
    'Kosten, eine Bestellung aufzugeben und anzunehmen, ein Wert für alle Perioden oder einer für jede',
  'cost of holding a unit to the next period': 'Kosten, eine Einheit bis in die nächste Periode zu lagern',
  'price of a unit, one for all periods or one for each':
    'Preis einer Einheit, einer für alle Perioden oder einer für jede',
  'stock at the start': 'Bestand am Anfang',
  'a row for each period, then the total': 'eine Zeile für jede Periode, dann die Summe',
  'the period, from 1': 'die Periode, ab 1',
  order: 'Bestellung',
  'units to order at its start': 'Einheiten, die an ihrem Anfang zu bestellen sind',
  'stock at end': 'Bestand am Ende',
  'units in stock at its end': 'Einheiten, die an ihrem Ende im Bestand sind',
  'order cost, goods and holding': 'Bestellkosten, Ware und Lagerhaltung',
  'what the periods need beyond onHand': 'was die Perioden über onHand hinaus brauchen',
  'number of orders': 'Zahl der Bestellungen',
  'cost of the orders': 'Kosten der Bestellungen',
  'price of the goods': 'Preis der Ware',
  'cost of holding stock': 'Kosten der Lagerhaltung',
  'the least cost of the season': 'die geringsten Kosten der Saison',
  'Excel has no formula that weighs every timing of the orders. The check is whether the orders of the plan cover the needs of every period at the cost that the plan says; no other timing costs less.':
    'Excel hat keine Formel, die alle Zeitpunkte der Bestellungen gegeneinander abwägt. Die Prüfung ist, ob die Bestellungen des Plans den Bedarf jeder Periode zu den Kosten decken, die der Plan nennt; kein anderer Zeitpunkt kostet weniger.',
  'Two small needs are ordered together, the large ones each on its own':
    'Zwei kleine Mengen werden zusammen bestellt, die großen je für sich',
  'A higher price from the third period on is worth holding stock for':
    'Weil der Preis ab der dritten Periode höher ist, lohnt sich ein Vorrat',
}
