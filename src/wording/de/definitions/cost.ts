/** The texts of the functions of cost and price, each beside the first function that has it. */
export const cost: Readonly<Record<string, string>> = {
  // MEDIUMCOST
  'Medium cost per cutting stuck, for single use or spread over the rounds it is reused.':
    'Substratkosten pro gesteckten Steckling, für Einweg oder verteilt auf die Durchgänge der Wiederverwendung.',
  'Settling and spilling divide. With more than one round: the first use is not washed, each later round pays washing and topping up, lost medium is not replaced, no interest (REUSECOST has it). Per cutting stuck, not per liner sold: see PERLINER.':
    'Für Setzung und Verschüttetes wird geteilt, nicht zugeschlagen. Bei mehr als einem Durchgang: vor der ersten Verwendung wird nicht gewaschen, jeder spätere Durchgang zahlt das Waschen und Ergänzen, verlorenes Substrat wird nicht ersetzt, kein Zins (den hat REUSECOST). Pro gesteckten Steckling, nicht pro verkaufte Jungpflanze: siehe PERLINER.',
  'volume of medium for one cutting, settled': 'Volumen des Substrats für einen Steckling, gesetzt',
  'cost of a loose litre of the medium': 'Kosten eines losen Liters Substrat',
  'rounds the medium is used, the first one included':
    'Durchgänge, in denen das Substrat verwendet wird, der erste mitgezählt',
  'washing or steaming before each later round': 'Waschen oder Dämpfen vor jedem späteren Durchgang',
  'share of the medium that is topped up before each later round':
    'Anteil des Substrats, der vor jedem späteren Durchgang ergänzt wird',
  'share of the places that is lost in each round': 'Anteil der Plätze, der in jedem Durchgang verloren geht',
  'medium cost per cutting stuck': 'Substratkosten pro gesteckten Steckling',
  'loose medium for one cutting': 'loses Substrat für einen Steckling',
  'medium for the first round': 'Substrat für den ersten Durchgang',
  'average number of rounds a place lasts': 'Durchgänge, die ein Platz erlebt',
  'washing and topping up of all later rounds': 'Waschen und Ergänzen aller späteren Durchgänge',
  '65 mL of a mix at 0.15 a litre, settling by a tenth':
    '65 mL einer Mischung zu 0,15 pro Liter, die sich um ein Zehntel setzt',
  'Sand used for 6 rounds, 0.004 for washing, 5 % topped up': 'Sand für 6 Durchgänge, Waschen 0,004, 5 % ergänzt',

  // ROOTINGCOST
  'Whole cost per saleable liner of one rooting method: trays, sand bed, water, premix, rockwool.':
    'Gesamte Kosten pro verkaufsfähige Jungpflanze für ein Bewurzelungsverfahren: Platten, Sandbeet, Wasser, Fertigmischung, Steinwolle.',
  'Vessels, bed or medium cost their average per round with interest, as REUSECOST has it: money flows at the start of a round, the first use is not washed, what is lost is not replaced. All cuttings of a round share it; yield divides last, because the liners sold bear all cuttings stuck. cuttingsPerRound is for what firstCost buys, none of it lost yet.':
    'Gefäße, Beet oder Substrat zählen mit ihren mittleren Kosten pro Durchgang mit Zins, wie in REUSECOST: das Geld fließt am Anfang eines Durchgangs, vor der ersten Verwendung wird nicht gewaschen, Verlorenes wird nicht ersetzt. Alle Stecklinge eines Durchgangs teilen sie sich; zuletzt wird durch die Ausbeute geteilt, weil die verkauften Jungpflanzen alle gesteckten Stecklinge tragen. cuttingsPerRound gilt für das, was mit firstCost gekauft wird, solange nichts davon verloren ist.',
  'what the vessels, bed or medium cost new': 'was die Gefäße, das Beet oder das Substrat neu kosten',
  'rounds they are used, the first one included': 'Durchgänge, in denen sie verwendet werden, der erste mitgezählt',
  'cuttings that what firstCost buys takes in one round':
    'Stecklinge, die das mit firstCost Gekaufte in einem Durchgang aufnimmt',
  'share of the vessels or medium that is lost in each round':
    'Anteil der Gefäße oder des Substrats, der in jedem Durchgang verloren geht',
  'the cutting, hormone, labour and bench': 'Steckling, Bewurzelungshormon, Arbeit und Stellfläche',
  'what they are worth after the last round, were none lost; negative for disposal':
    'was sie nach dem letzten Durchgang wert sind, wenn nichts verloren ginge; negativ für die Entsorgung',
  'cost per saleable liner': 'Kosten pro verkaufsfähige Jungpflanze',
  'its part of the round, and all else that is spent on a cutting':
    'sein Anteil am Durchgang und alles, was sonst für einen Steckling ausgegeben wird',
  'the survivors bear the cost of all': 'die überlebenden tragen die Kosten aller',
  'Trays for 1,000 cuttings: 90, used 9 times, washing 4.50, 5 % topped up, 0.072 else, 85 % saleable':
    'Platten für 1.000 Stecklinge: 90, 9-mal verwendet, Waschen 4,50, 5 % ergänzt, sonst 0,072, 85 % verkaufsfähig',
  'Rockwool for 1,000 cuttings, used once, 6 for its disposal':
    'Steinwolle für 1.000 Stecklinge, einmal verwendet, 6 für die Entsorgung',

  // PERLINER
  'Cost per saleable liner from a cost per cutting.':
    'Kosten pro verkaufsfähige Jungpflanze aus den Kosten pro Steckling.',
  'Losses divide: a cost of 0.50 with 10 % lost is 0.5556 for each that is left, not 0.55.':
    'Für Ausfälle wird geteilt, nicht zugeschlagen: Kosten von 0,50 bei 10 % Ausfall sind 0,5556 für jede verbliebene, nicht 0,55.',
  'cost of one cutting stuck': 'Kosten eines gesteckten Stecklings',
  '0.50 with a tenth lost is 0.5556': '0,50 bei einem Zehntel Ausfall sind 0,5556',
  'Three stages of 85, 95 and 97 %': 'Drei Stufen mit 85, 95 und 97 %',

  // LINERCOST
  'Cost per saleable liner where each stage has its own cost and its own losses.':
    'Kosten pro verkaufsfähige Jungpflanze, wenn jede Stufe ihre eigenen Kosten und Ausfälle hat.',
  'The cost of a stage is for each cutting or plant that enters it, and its rate is the share of those that leaves it alive. What is spent early is borne by the few that come through all later stages, so a late loss is the dearest. With one stage it is PERLINER.':
    'Die Kosten einer Stufe gelten für jeden Steckling oder jede Pflanze, die in sie eintritt, und die Rate der Stufe ist der Anteil, der sie lebend verlässt. Was früh ausgegeben wird, tragen die wenigen, die alle späteren Stufen überstehen; darum ist ein später Ausfall der teuerste. Mit einer einzigen Stufe ist es PERLINER.',
  'what each stage costs for every cutting or plant that enters it':
    'was jede Stufe kostet, für jeden Steckling oder jede Pflanze, die in sie eintritt',
  'share of what enters each stage that becomes a saleable liner':
    'Anteil dessen, was in jede Stufe eintritt, der zu verkaufsfähigen Jungpflanzen wird',
  'what each stage costs a saleable liner': 'was jede Stufe pro verkaufsfähige Jungpflanze kostet',
  'all stages together': 'alle Stufen zusammen',
  'Sticking 0.20 with 80 % striking, potting on 0.30 with 95 % living':
    'Stecken 0,20 mit 80 % Bewurzelung, Topfen 0,30 mit 95 % Anwachsen',
  'One stage: 0.50 with a tenth lost': 'Eine Stufe: 0,50 bei einem Zehntel Ausfall',

  // BENCHCOST
  'What the bench space of one cutting costs.': 'Was die Stellfläche eines Stecklings kostet.',
  'The rate is for each m2 of bench that is paid for, in use or empty, so the plants that stand there bear the empty part too. Where the rate is already one for m2 in use, leave benchUseShare out. Every cutting stuck bears its space, those that are lost later among them: see PERLINER.':
    'Der Satz gilt für jeden m2 Stellfläche, der bezahlt wird, belegt oder leer; die Pflanzen, die dort stehen, tragen also auch den leeren Teil. Gilt der Satz schon für belegte m2, lassen Sie benchUseShare weg. Jeder gesteckte Steckling trägt seinen Platz, auch die später ausfallenden: siehe PERLINER.',
  'weeks that the cuttings stand on the bench': 'Wochen, die die Stecklinge auf der Stellfläche stehen',
  'cuttings on a m2 of bench in use': 'Stecklinge auf einem m2 belegter Stellfläche',
  'what a m2 of bench costs a week: heat, light, rent, upkeep':
    'was ein m2 Stellfläche pro Woche kostet: Heizung, Licht, Miete, Unterhalt',
  'share of the bench paid for that is in use, over the weeks':
    'Anteil der bezahlten Stellfläche, der über diese Wochen belegt ist',
  'bench cost per cutting': 'Kosten der Stellfläche pro Steckling',
  'what a m2 in use costs a week, the empty part included':
    'was ein belegter m2 pro Woche kostet, der leere Teil eingerechnet',
  'all weeks, shared by the cuttings on the m2': 'alle Wochen, verteilt auf die Stecklinge auf dem m2',
  '6 weeks at 0.90 a m2, 400 cuttings on it, three quarters of the bench in use':
    '6 Wochen zu 0,90 pro m2, darauf 400 Stecklinge, drei Viertel der Stellfläche belegt',
  'A million a year over 40,000 square feet of which 75 % are in use, one plant a square foot':
    'Eine Million im Jahr auf 40.000 Quadratfuß, von denen 75 % belegt sind, eine Pflanze pro Quadratfuß',

  // LABOURCOST
  'Labour cost per unit from a pace and a wage.': 'Arbeitskosten pro Stück aus Arbeitstempo und Lohn.',
  'The pace is that of one person, breaks and walking included. For several days, crews or sites, take all units over all hours: an average of their paces or costs would give a small slow day the weight of a large one.':
    'Das Tempo ist das einer Person, Pausen und Wege eingerechnet. Teilen Sie für mehrere Tage, Gruppen oder Standorte alle Stücke durch alle Stunden: ein Mittel der Tempos oder der Kosten gäbe einem kleinen, langsamen Tag das Gewicht eines großen.',
  'cuttings stuck, trays filled or units moved by one person in an hour':
    'Stecklinge, die eine Person in einer Stunde steckt, Platten, die sie füllt, oder Stücke, die sie bewegt',
  'wage of one hour': 'Lohn einer Stunde',
  'what the employer pays on top, as a share of the wage: contributions, holidays, sick pay':
    'was der Arbeitgeber zusätzlich zahlt, als Anteil des Lohns: Sozialbeiträge, Urlaub, Krankheit',
  'labour cost per unit': 'Arbeitskosten pro Stück',
  'what an hour costs the nursery': 'was eine Stunde den Betrieb kostet',
  'the hour shared by the units of the hour': 'die Stunde, verteilt auf die Stücke der Stunde',
  '600 cuttings an hour at a wage of 15 and 30 % on top':
    '600 Stecklinge pro Stunde bei einem Lohn von 15 und 30 % Nebenkosten',
  'A tray from filling to bench: 2,109 hours and 26,392 of wages for 1,316,111 cuttings, the averages of 14 firms':
    'Eine Platte vom Füllen bis auf den Tisch: 2.109 Stunden und 26.392 Lohn für 1.316.111 Stecklinge, die Mittelwerte von 14 Betrieben',

  // LINERPRICE
  'Selling price of a liner from its cost and the margin wanted.':
    'Verkaufspreis einer Jungpflanze aus ihren Kosten und der gewünschten Marge.',
  'The margin is a share of the selling price, a markup one of the cost: 35 % margin on 2.00 is 3.08, 50 % markup is 3.00. With priceStep the price is rounded up to whole steps, so it never keeps less than the margin; the least price is one step. Without tax.':
    'Die Marge ist ein Anteil am Verkaufspreis, der Aufschlag einer an den Kosten: 35 % Marge auf 2,00 sind 3,08, 50 % Aufschlag sind 3,00. Mit priceStep wird der Preis auf ganze Schritte aufgerundet, er unterschreitet die Marge also nie; der kleinste Preis ist ein Schritt. Ohne Steuer.',
  'cost of one saleable liner': 'Kosten einer verkaufsfähigen Jungpflanze',
  'margin wanted, as a share of the selling price': 'gewünschte Marge, als Anteil am Verkaufspreis',
  'what prices are whole multiples of, such as 0.05; 0 for no rounding':
    'wovon Preise ganze Vielfache sind, etwa 0,05; 0 ohne Rundung',
  price: 'Preis',
  'selling price of one liner': 'Verkaufspreis einer Jungpflanze',
  'the same margin, said as a markup on the cost': 'dieselbe Marge, ausgedrückt als Aufschlag auf die Kosten',
  'price that keeps just this margin': 'Preis, der genau diese Marge einhält',
  'rounded up to whole price steps, where there is a step':
    'aufgerundet auf ganze Preisschritte, wo es einen Schritt gibt',
  'A cost of 2.00 at a margin of 35 %, to the cent': 'Kosten von 2,00 bei einer Marge von 35 %, auf den Cent',
  'The same without rounding': 'Dasselbe ohne Rundung',
  'A cost of 0.418 at a margin of 30 %, in steps of 0.05':
    'Kosten von 0,418 bei einer Marge von 30 %, in Schritten von 0,05',

  // QUOTE
  'Prices for several quantities, with the margin kept, the floor price, and a warning where a smaller order would cost more than a larger one.':
    'Preise für mehrere Mengen, mit der eingehaltenen Marge, der Preisuntergrenze und einer Warnung, wo ein kleinerer Auftrag mehr kosten würde als ein größerer.',
  'Each price holds for every liner of an order from its quantity up to the next one. The setup is spread over the quantity of the row; price and step are those of LINERPRICE. Just below a price break an order can cost more than the break itself, a price break overlap: the warning names the first such order and the last, against the cheapest larger quantity. Rows stay in the order given. Without tax.':
    'Jeder Preis gilt für jede Jungpflanze eines Auftrags, von seiner Menge an bis vor die nächste. Die Auftragskosten werden auf die Menge der Zeile verteilt; Preis und Schritt sind die von LINERPRICE. Knapp unter einer Preisstaffel kann ein Auftrag mehr kosten als die Staffelmenge selbst, weil die Staffeln sich überschneiden: die Warnung nennt den ersten solchen Auftrag und den letzten, verglichen mit der günstigsten größeren Menge. Die Zeilen bleiben in der gegebenen Reihenfolge. Ohne Steuer.',
  'cost of one saleable liner, without the setup': 'Kosten einer verkaufsfähigen Jungpflanze, ohne die Auftragskosten',
  'quantities to quote, each once': 'anzubietende Mengen, jede einmal',
  'margin wanted at each quantity, as a share of the selling price':
    'gewünschte Marge bei jeder Menge, als Anteil am Verkaufspreis',
  'what an order costs once, however large: picking, packing, papers':
    'was ein Auftrag einmal kostet, wie groß er auch ist: Zusammenstellen, Verpacken, Papiere',
  quote: 'Angebot',
  'a row for each quantity': 'eine Zeile für jede Menge',
  quantity: 'Menge',
  'liners from which this price is each': 'Jungpflanzen, ab denen dieser Stückpreis gilt',
  'price each': 'Stückpreis',
  total: 'Summe',
  'price of the whole quantity': 'Preis der ganzen Menge',
  'margin kept': 'eingehaltene Marge',
  'what is left of the price, as a share of the price': 'was vom Preis bleibt, als Anteil am Preis',
  markup: 'Aufschlag',
  'what is left of the price, as a share of the cost': 'was vom Preis bleibt, als Anteil an den Kosten',
  'floor price': 'Preisuntergrenze',
  'cost of one liner with its part of the setup: below it the order loses money':
    'Kosten einer Jungpflanze mit ihrem Teil der Auftragskosten: darunter verliert der Auftrag Geld',
  warning: 'Warnung',
  'orders that cost more than a larger one, and a price each that is higher than for fewer':
    'Bestellungen, die mehr kosten als eine größere, und ein Stückpreis, der höher ist als bei weniger',
  'cost of one liner with its part of the setup, at each quantity':
    'Kosten einer Jungpflanze mit ihrem Teil der Auftragskosten, bei jeder Menge',
  'selling price that keeps the margin, rounded up to the step':
    'Verkaufspreis, der die Marge einhält, aufgerundet auf den Schritt',
  'price of each quantity': 'Preis jeder Menge',
  'what is left, as a share of the price': 'was bleibt, als Anteil am Preis',
  'the same as a share of the cost': 'dasselbe als Anteil an den Kosten',
  'the first order that costs more than a larger quantity': 'der erste Auftrag, der mehr kostet als eine größere Menge',
  'what to look at before the quote goes out': 'was anzusehen ist, bevor das Angebot hinausgeht',
  'A break at 1,000: 953 liners at 1.05 cost 1,000.65, a thousand at 1.00 cost 1,000':
    'Eine Staffel bei 1.000: 953 Jungpflanzen zu 1,05 kosten 1.000,65, tausend zu 1,00 kosten 1.000',
  'A setup of 25 spread over the quantity; no step, so the margin kept is the one asked for':
    'Auftragskosten von 25, verteilt auf die Menge; ohne Schritt, also bleibt genau die gewünschte Marge',
}
