/** The texts of the functions of reuse, each beside the first function that has it. */
export const reuse: Readonly<Record<string, string>> = {
  // REUSECOST
  'Average cost per round, with interest, of something that is washed and used again.':
    'Gleichmäßige Kosten pro Durchgang für etwas, das gewaschen und wiederverwendet wird.',
  'All money flows at the start of a round. The first use is not washed; each later round pays washing and topping up; broken units are not replaced; the end value comes back after the last round. The level cost is the average cost per round with interest, which accountants call the equivalent cost: the same amount at the start of every round, for every unit then in use, that is worth as much today as all that is paid.':
    'Alles Geld fließt am Anfang eines Durchgangs. Vor der ersten Verwendung wird nicht gewaschen; jeder spätere Durchgang zahlt Waschen und Ergänzen; zerbrochene Stücke werden nicht ersetzt; der Endwert kommt nach dem letzten Durchgang zurück. Die gleichmäßigen Kosten sind die mittleren Kosten pro Durchgang mit Zins, in der Buchhaltung Annuität genannt: derselbe Betrag am Anfang jedes Durchgangs, für jedes Stück, das dann in Gebrauch ist, der heute so viel wert ist wie alles, was gezahlt wird.',
  'what one unit costs new': 'was eine Einheit neu kostet',
  'rounds it is used, the first one included': 'Durchgänge, in denen sie verwendet wird, der erste mitgezählt',
  'washing and disinfecting before each later round': 'Waschen und Desinfizieren vor jedem späteren Durchgang',
  'share of firstCost that is topped up before each later round':
    'Anteil von firstCost, der vor jedem späteren Durchgang ergänzt wird',
  'share of the units that is lost in each round': 'Anteil der Einheiten, der in jedem Durchgang verloren geht',
  'what a survivor is worth after the last round; negative for disposal':
    'was eine verbliebene Einheit nach dem letzten Durchgang wert ist; negativ für die Entsorgung',
  'interest for a year': 'Zins für ein Jahr',
  'rounds in a year': 'Durchgänge in einem Jahr',
  'average cost per round and unit in use, with interest':
    'mittlere Kosten pro Durchgang und Stück in Gebrauch, mit Zins',
  'what 1 grows to with interest until the next round': 'worauf 1 mit Zins bis zum nächsten Durchgang anwächst',
  'what the next round counts today, for a unit in use now':
    'was der nächste Durchgang heute zählt, für eine jetzt genutzte Einheit',
  'uses of one unit bought, later ones counting less by the interest':
    'Verwendungen eines gekauften Stücks, spätere um den Zins weniger',
  'washing and topping up of all later rounds, today':
    'Waschen und Ergänzen aller späteren Durchgänge, auf heute abgezinst',
  'end value of the survivors, today': 'Restwert der verbliebenen Einheiten, auf heute abgezinst',
  'all of it over the uses': 'alles zusammen, verteilt auf die Verwendungen',
  'First cost 1,000, washing 50, 5 % topped up: 200 a round over 9 rounds':
    'Anschaffung 1.000, Waschen 50, 5 % ergänzt: 200 pro Durchgang bei 9 Durchgängen',
  'A loan of 1,000 over 12 rounds at 5 % a round, with 100 left to pay':
    'Ein Darlehen von 1.000 über 12 Durchgänge zu 5 % pro Durchgang, am Ende bleiben 100 zu zahlen',

  // BREAKEVEN
  'The round from which washing and using again costs no more than buying single-use each time.':
    'Der Durchgang, ab dem Waschen und Wiederverwenden nicht mehr kostet als jedes Mal Einweg zu kaufen.',
  'Compares the average cost per round with interest of REUSECOST, over that many rounds, with single use, each divided by its yield of saleable liners. An exact tie counts as reached. Money flows at the start of a round and the first use is not washed.':
    'Vergleicht die mittleren Kosten pro Durchgang mit Zins nach REUSECOST über so viele Durchgänge mit Einweg, beide geteilt durch ihre Ausbeute an verkaufsfähigen Jungpflanzen. Genauer Gleichstand gilt als erreicht. Das Geld fließt am Anfang eines Durchgangs, und vor der ersten Verwendung wird nicht gewaschen.',
  'what single use costs each round, for the same work': 'was Einweg in jedem Durchgang kostet, für dieselbe Arbeit',
  'what one reusable unit costs new': 'was eine Mehrwegeinheit neu kostet',
  'rounds that the reusable can last': 'Durchgänge, die Mehrweg halten kann',
  'share of the cuttings in single use that becomes a saleable liner':
    'Anteil der Stecklinge bei Einweg, aus denen verkaufsfähige Jungpflanzen werden',
  'share of the cuttings in the reusable that becomes a saleable liner':
    'Anteil der Stecklinge bei Mehrweg, aus denen verkaufsfähige Jungpflanzen werden',
  'the first number of rounds at which reuse costs no more':
    'die erste Zahl von Durchgängen, bei der Wiederverwendung nicht mehr kostet',
  'what a round of the reusable may cost, the yields allowed for':
    'was ein Durchgang mit Mehrweg kosten darf, die Ausbeuten berücksichtigt',
  'level cost of the reusable one round earlier': 'gleichmäßige Kosten von Mehrweg bei einem Durchgang weniger',
  'level cost of the reusable over that many rounds': 'gleichmäßige Kosten von Mehrweg über so viele Durchgänge',
  'the first number of rounds at which it costs no more':
    'die erste Zahl von Durchgängen, bei der es nicht mehr kostet',
  'First cost 1,000, washing 50, 5 % topped up, single use 200':
    'Anschaffung 1.000, Waschen 50, 5 % ergänzt, Einweg 200',
  'First cost 2.40, washing 0.12, single use 0.45': 'Anschaffung 2,40, Waschen 0,12, Einweg 0,45',
  'The same, with 14 % of the units lost each round':
    'Dasselbe, wenn in jedem Durchgang 14 % der Einheiten verloren gehen',

  // REUSELEDGER
  'The money that flows, round by round, for something that is washed and used again.':
    'Das Geld, das Durchgang für Durchgang fließt, für etwas, das gewaschen und wiederverwendet wird.',
  'Every amount is for one unit bought. The outlay is paid at the start of the round for the units then in use, with no interest taken off: the first cost in round 1, washing and topping up in each later round, never a replacement of lost units. A present value is what a later payment is worth at the start of round 1, with the interest taken off. The end value is in no outlay and in no present value: it counts in the level cost alone, which takes it as coming back one round after the round of its row. The last level cost is that of REUSECOST.':
    'Jeder Betrag gilt für ein gekauftes Stück. Die Ausgabe fließt am Anfang des Durchgangs für die Stücke, die dann in Gebrauch sind, ohne Abzug von Zins: die Anschaffung in Durchgang 1, Waschen und Ergänzen in jedem späteren, nie ein Ersatz für verlorene Stücke. Ein Barwert ist, was eine spätere Zahlung am Anfang von Durchgang 1 wert ist, um den Zins vermindert. Der Endwert steht in keiner Ausgabe und in keinem Barwert: er zählt nur in den gleichmäßigen Kosten, wo er einen Durchgang nach dem der Zeile zurückkommt. Die letzten gleichmäßigen Kosten sind die von REUSECOST.',
  'rounds it is used, the first one included; each is a row of the table':
    'Durchgänge, in denen sie verwendet wird, der erste mitgezählt; jeder ist eine Zeile der Tabelle',
  ledger: 'Verlauf',
  'a row for each round, per unit bought': 'eine Zeile für jeden Durchgang, pro gekaufte Einheit',
  round: 'Durchgang',
  'the round, from 1': 'der Durchgang, ab 1',
  'units in use': 'genutzte Einheiten',
  'share of the units bought that is still in use in that round':
    'Anteil der gekauften Einheiten, die in diesem Durchgang noch genutzt werden',
  outlay: 'Ausgabe',
  'paid at the start of the round for the units then in use':
    'am Anfang des Durchgangs für die dann genutzten Einheiten bezahlt',
  'present value': 'Barwert',
  'what that outlay is worth at the start of round 1, with the interest taken off':
    'was diese Ausgabe am Anfang von Durchgang 1 wert ist, um den Zins vermindert',
  'running present value': 'laufender Barwert',
  'the present values so far': 'die Barwerte bis hierher',
  'level cost if stopped here': 'gleichmäßige Kosten bei Ende nach diesem Durchgang',
  'REUSECOST over the rounds so far, with the end value': 'REUSECOST über die bisherigen Durchgänge, mit dem Restwert',
  'washing and topping up of a unit before a later round':
    'Waschen und Ergänzen einer Einheit vor einem späteren Durchgang',
  'share of the units bought that is in use in the last round':
    'Anteil der gekauften Einheiten, die im letzten Durchgang genutzt werden',
  'outlay of the last round': 'Ausgabe des letzten Durchgangs',
  'present value of that outlay': 'Barwert dieser Ausgabe',
  'present values of all rounds': 'Barwerte aller Durchgänge',
  'level cost over all rounds': 'gleichmäßige Kosten über alle Durchgänge',
  'First cost 2.40, washing 0.12, used three times': 'Anschaffung 2,40, Waschen 0,12, dreimal verwendet',
  'The same with a quarter of the units lost each round and disposal at 0.40, at 25 % interest a round: the next round counts 0.6':
    'Dasselbe, wenn in jedem Durchgang ein Viertel der Einheiten verloren geht und die Entsorgung 0,40 kostet, bei 25 % Zins pro Durchgang: der nächste Durchgang zählt 0,6',
}
