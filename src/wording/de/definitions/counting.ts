/** The texts of the functions of counting, each beside the first function that has it. */
export const counting: Readonly<Record<string, string>> = {
  // CUTTINGS
  'Cuttings to stick for the liners that were promised, on average or with a chance of having enough.':
    'Wie viele Stecklinge für die zugesagten Jungpflanzen zu stecken sind, im Mittel oder mit einer gewünschten Sicherheit.',
  'The rates multiply, and the loss divides: 10 % lost of 100 needs 112 cuttings, not 110. Without a confidence the number is right on average only, so it falls short about every second time; batchSpread counts only with a confidence.':
    'Die Raten werden miteinander multipliziert, und für den Ausfall wird geteilt, nicht zugeschlagen: bei 10 % Ausfall sind für 100 Jungpflanzen 112 Stecklinge nötig, nicht 110. Ohne Sicherheit stimmt die Zahl nur im Mittel und reicht etwa jedes zweite Mal nicht; batchSpread zählt nur mit einer Sicherheit.',
  'liners that must be saleable': 'Jungpflanzen, die verkaufsfähig sein müssen',
  'the share that survives each stage (strike, potting on, grade-out), one cell a stage':
    'der Anteil, der jede Stufe übersteht (Bewurzeln, Topfen, Aussortieren), eine Zelle pro Stufe',
  'the chance of having at least that many liners; left out, the average decides':
    'die Wahrscheinlichkeit, mindestens so viele Jungpflanzen zu haben; ohne Angabe gilt der Mittelwert',
  'how far the overall rate differs from batch to batch (its standard deviation, from BATCHSPREAD)':
    'wie weit die Gesamtrate von Partie zu Partie abweicht (ihre Standardabweichung, aus BATCHSPREAD)',
  'cuttings to stick': 'zu steckende Stecklinge',
  'share of the cuttings that becomes a saleable liner':
    'Anteil der Stecklinge, aus denen verkaufsfähige Jungpflanzen werden',
  'cuttings that are enough on average': 'Stecklinge, die im Mittel reichen',
  'least number with the confidence asked for': 'kleinste Zahl mit der gewünschten Sicherheit',
  'chance of having enough with that number': 'Wahrscheinlichkeit, dass diese Zahl reicht',
  'Excel has no formula for the number of trials. Without a confidence it is ROUNDUP(liners/PRODUCT(stageRates),0).':
    'Excel hat keine Formel für die Zahl der Versuche. Ohne Sicherheit ist es ROUNDUP(liners/PRODUCT(stageRates),0).',
  '1,000 liners at 85 % take 1,177 cuttings on average':
    '1.000 Jungpflanzen bei 85 % brauchen im Mittel 1.177 Stecklinge',
  'More than 50 survivors (51) at 90 %, with a chance of 95 %':
    'Mehr als 50 Überlebende (51) bei 90 %, mit einer Sicherheit von 95 %',
  'Batches that differ with an intra-batch correlation of 0.02':
    'Partien, die sich unterscheiden: die Korrelation innerhalb der Partie ist 0,02',

  // BATCHSPREAD
  'How much the true rate differs from batch to batch, from past batches, for CUTTINGS and OVERSTICK.':
    'Wie stark sich die wahre Rate von Partie zu Partie unterscheidet, aus früheren Partien, für CUTTINGS und OVERSTICK.',
  'The standard deviation of the rates behind the batches: in some two batches of three the rate lies no farther than that from the average. What chance alone adds is taken off, by comparing how batches differ with how cuttings within a batch do (an analysis of variance), and 0 is left where the batches differ no more than chance. A correlation above 0.9999 counts as 0.9999.':
    'Die Standardabweichung der Raten hinter den Partien: in etwa zwei von drei Partien liegt die Rate nicht weiter als das vom Durchschnitt. Was der Zufall allein beiträgt, ist abgezogen, indem die Unterschiede zwischen den Partien mit denen innerhalb einer Partie verglichen werden (eine Varianzanalyse); 0 bleibt, wo die Partien sich nicht mehr unterscheiden als durch Zufall. Eine Korrelation über 0,9999 zählt als 0,9999.',
  'cuttings that were stuck, one cell a batch': 'gesteckte Stecklinge, eine Zelle pro Partie',
  'those of them that became liners, one cell a batch': 'davon zu Jungpflanzen geworden, eine Zelle pro Partie',
  'how far the rate differs from batch to batch (its standard deviation)':
    'wie weit die Rate von Partie zu Partie abweicht (ihre Standardabweichung)',
  'share of all cuttings that was taken': 'Anteil der angewachsenen an allen Stecklingen',
  'mean square between the batches': 'mittleres Quadrat zwischen den Partien',
  'mean square within the batches': 'mittleres Quadrat innerhalb der Partien',
  'mean size of a batch, less where the sizes differ':
    'mittlere Größe einer Partie, kleiner, wo die Größen sich unterscheiden',
  'correlation within a batch, 0 where the batches differ no more than chance':
    'Korrelation innerhalb einer Partie, 0, wo sich die Partien nicht stärker als zufällig unterscheiden',
  'Three batches of 100, of which 90, 80 and 70 took': 'Drei Partien zu 100, von denen 90, 80 und 70 angewachsen sind',
  'Batches that differ no more than chance': 'Partien, die sich nicht stärker als zufällig unterscheiden',

  // TRAYS
  'Whole trays for a number of cuttings.': 'Ganze Platten für eine Zahl von Stecklingen.',
  'Part of a tray counts as a tray. spareShare is a share of the cells, not of the cuttings.':
    'Eine angebrochene Platte zählt als ganze. spareShare ist ein Anteil der Zellen, nicht der Stecklinge.',
  'cells in one tray': 'Zellen einer Platte',
  'share of the cells that is left empty': 'Anteil der Zellen, die leer bleiben',
  'trays to fill': 'zu füllende Platten',
  'cells of a tray that take a cutting': 'Zellen einer Platte, die einen Steckling aufnehmen',
  'whole trays': 'ganze Platten',
  '1,201 cuttings in trays of 72 cells': '1.201 Stecklinge in Platten mit 72 Zellen',
  'The same with a tenth of the cells left empty': 'Dasselbe, wenn ein Zehntel der Zellen leer bleibt',

  // OVERSTICK
  'Cuttings to stick so that cuttings, missing liners and surplus liners together leave the most money on average.':
    'Wie viele Stecklinge zu stecken sind, damit nach Stecklingen, fehlenden und überzähligen Jungpflanzen im Mittel am meisten Geld bleibt.',
  'A missing liner loses lostPerMissingLiner: the price that is not earned, plus any penalty. A surplus liner brings valuePerSurplusLiner. Part of a liner counts as a whole one, and of two numbers that leave the same the smaller is given: 0 where no cutting pays.':
    'Eine fehlende Jungpflanze kostet lostPerMissingLiner: den entgangenen Preis und eine etwaige Vertragsstrafe. Eine überzählige bringt valuePerSurplusLiner. Ein Bruchteil einer Jungpflanze zählt als ganze, und von zwei Zahlen, bei denen gleich viel bleibt, gilt die kleinere: 0, wo sich kein Steckling lohnt.',
  'liners that were promised': 'zugesagte Jungpflanzen',
  'what one more cutting costs until it is sold or lost':
    'was ein weiterer Steckling kostet, bis er verkauft oder ausgefallen ist',
  'price not earned and penalty for each liner that is missing':
    'entgangener Preis und Vertragsstrafe für jede fehlende Jungpflanze',
  'what a liner beyond those promised brings': 'was eine Jungpflanze über die zugesagten hinaus bringt',
  'what a cutting too few loses, where it would have survived':
    'was durch einen Steckling zu wenig verloren geht, wenn er überlebt hätte',
  'what a cutting too many loses': 'was durch einen Steckling zu viel verloren geht',
  'chance of having enough up to which one more cutting pays':
    'Wahrscheinlichkeit, genug zu haben, bis zu der sich ein weiterer Steckling lohnt',
  'least number that reaches it': 'kleinste Zahl, die sie erreicht',
  'liners that are missing, on average': 'fehlende Jungpflanzen im Mittel',
  'liners beyond those promised, on average': 'Jungpflanzen über die zugesagten hinaus, im Mittel',
  'what is left on average': 'was im Mittel bleibt',
  'what would be left with one cutting fewer': 'was mit einem Steckling weniger bliebe',
  'what would be left with one cutting more': 'was mit einem Steckling mehr bliebe',
  'Excel has no formula for the number of trials. The check is for batches that do not differ, and for a number above 0.':
    'Excel hat keine Formel für die Zahl der Versuche. Die Prüfung gilt für Partien, die sich nicht unterscheiden, und für eine Zahl über 0.',
  '100 liners at 80 %, a cutting at 0.10, and 1.50 lost with each missing liner':
    '100 Jungpflanzen bei 80 %, ein Steckling zu 0,10, und jede fehlende Jungpflanze kostet 1,50',
  'The same, where a surplus liner still brings 0.05': 'Dasselbe, wenn eine überzählige Jungpflanze noch 0,05 bringt',
  'The same, with batches that differ by 0.06': 'Dasselbe mit Partien, die sich um 0,06 unterscheiden',

  // MOTHERPLANTS
  'Whole stock plants that give the cuttings of a season.':
    'Ganze Mutterpflanzen, die die Stecklinge einer Saison geben.',
  'A flush is one taking of cuttings off a plant; count those that fall before the cuttings are stuck. usableShare is a share of the cuttings taken, and spareShare one of the plants: those kept in reserve for what dies or is rested. Both divide. Part of a plant counts as a plant.':
    'Ein Schnitt ist eine Ernte von Stecklingen einer Pflanze; zählen Sie die, die vor dem Stecken liegen. usableShare ist ein Anteil der geschnittenen Stecklinge, spareShare einer der Pflanzen: die Reserve für das, was eingeht oder ruht. Durch beide wird geteilt. Eine angebrochene Pflanze zählt als ganze.',
  'cuttings that a plant gives in one flush': 'Stecklinge, die eine Pflanze in einem Schnitt gibt',
  'flushes taken for these cuttings': 'Schnitte für diese Stecklinge',
  'share of the cuttings taken that is fit to stick': 'Anteil der geschnittenen Stecklinge, der sich stecken lässt',
  'share of the plants that is kept in reserve': 'Anteil der Pflanzen, der als Reserve gehalten wird',
  'stock plants to keep': 'zu haltende Mutterpflanzen',
  'fit to stick, off one plant in all flushes': 'davon zu stecken, von einer Pflanze in allen Schnitten',
  'whole plants with the reserve': 'ganze Pflanzen mit der Reserve',
  '6,000 cuttings in 8 weeks off geraniums that give 2.5 a week':
    '6.000 Stecklinge in 8 Wochen von Pelargonien, die 2,5 pro Woche geben',
  'The same with nine tenths of them fit to stick, and a tenth of the plants in reserve':
    'Dasselbe, wenn sich neun Zehntel davon stecken lassen und ein Zehntel der Pflanzen Reserve ist',
}
