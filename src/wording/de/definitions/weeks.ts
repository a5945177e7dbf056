/** The texts of the functions of weeks and days, each beside the first function that has it. */
export const weeks: Readonly<Record<string, string>> = {
  // STICKDAY
  'The day to stick on, so that the liners are ready on the day of delivery.':
    'Der Tag, an dem zu stecken ist, damit die Jungpflanzen am Liefertag fertig sind.',
  'Each week is 7 days, over the end of a year too, and a part of a day counts as a whole one, so that nothing is late. A time of day does not count. The result is the number of a day; format its cell as a date.':
    'Jede Woche hat 7 Tage, auch über das Jahresende, und ein angebrochener Tag zählt als ganzer, damit nichts zu spät kommt. Eine Uhrzeit zählt nicht. Das Ergebnis ist die Nummer eines Tages; formatieren Sie seine Zelle als Datum.',
  'the day to stick on': 'der Tag, an dem zu stecken ist',
  'the day on which the liners must be ready': 'der Tag, an dem die Jungpflanzen fertig sein müssen',
  'the weeks that each stage takes, one cell a stage': 'die Wochen, die jede Stufe braucht, eine Zelle pro Stufe',
  'from sticking to delivery': 'vom Stecken bis zur Lieferung',
  'the same in whole days': 'dasselbe in ganzen Tagen',
  'Delivery on Monday 8 March 2027 after 6 weeks of rooting and 8 of growing on: Monday 30 November 2026':
    'Lieferung am Montag, 8. März 2027, nach 6 Wochen Bewurzelung und 8 Wochen Weiterkultur: Montag, 30. November 2026',
  'Half a week more is 4 days': 'Eine halbe Woche mehr sind 4 Tage',

  // STANDING
  'What stands in each week: containers in use, or bench that is taken, from the starts of the season.':
    'Was in jeder Woche steht: genutzte Behälter oder belegte Tischfläche, aus den Sätzen der Saison.',
  'Weeks begin on Monday (ISO 8601). A start stands in the week of its day and in as many weeks as it is held, with the weeks between two uses; a part of a week counts as a week, and which day of the week it was does not count. Where trays are cleared late in a week and others are stuck early in the same, type a week between. What is held 0 weeks stands nowhere and needs no washing. Without firstDay the table begins with the first week in which something stands, and without weeks it ends with the last; weeks in which nothing stands are in it, and where nothing stands at all there is one week with 0. What began before firstDay and still stands counts. The weeks are numbers of days; format their column as dates.':
    'Wochen beginnen am Montag (ISO 8601). Ein Satz steht ab der Woche seines Tages so viele Wochen, wie er belegt, mit den Wochen zwischen zwei Verwendungen; eine angebrochene Woche zählt als ganze, und der Wochentag zählt nicht. Wo Platten spät in einer Woche geräumt und andere früh in derselben gesteckt werden, geben Sie eine Woche dazwischen an. Was 0 Wochen belegt, steht nirgends und muss nicht gewaschen werden. Ohne firstDay beginnt die Tabelle mit der ersten Woche, in der etwas steht, und ohne weeks endet sie mit der letzten; Wochen, in denen nichts steht, sind darin, und wo überhaupt nichts steht, gibt es eine Woche mit 0. Was vor firstDay begann und noch steht, zählt. Die Wochen sind Nummern von Tagen; formatieren Sie ihre Spalte als Datum.',
  'the day of each start, one cell a start': 'der Tag jedes Satzes, eine Zelle pro Satz',
  'the weeks that each start stands': 'die Wochen, die jeder Satz steht',
  'what each start takes up: containers, or m2 of bench': 'was jeder Satz belegt: Behälter oder m2 Tischfläche',
  'weeks between two uses, for clearing and washing': 'Wochen zwischen zwei Verwendungen, für das Räumen und Waschen',
  'a day of the first week to show': 'ein Tag der ersten Woche, die gezeigt wird',
  'weeks to show': 'Wochen, die gezeigt werden',
  standing: 'Bestand',
  'a row for each week': 'eine Zeile für jede Woche',
  'week from': 'Woche ab',
  'the Monday with which the week begins': 'der Montag, mit dem die Woche beginnt',
  'what stands in that week': 'was in dieser Woche steht',
  'starts that stand in some week': 'Sätze, die in irgendeiner Woche stehen',
  'weeks shown': 'gezeigte Wochen',
  'the first week in which most stand': 'die erste Woche, in der am meisten steht',
  'what stands then': 'was dann steht',
  '40 trays for 3 weeks and, a week later, 25 for 2 weeks: 65 stand in the second and third week':
    '40 Platten für 3 Wochen und, eine Woche später, 25 für 2 Wochen: in der zweiten und dritten Woche stehen 65',
  'The same with a week for washing, from the week of 4 January 2027 on, for 4 weeks':
    'Dasselbe mit einer Woche für das Waschen, ab der Woche vom 4. Januar 2027, für 4 Wochen',

  // PEAK
  'The most that stand at once: how many containers to have, where the season uses them again and again.':
    'Was höchstens auf einmal steht: wie viele Behälter nötig sind, wenn die Saison sie immer wieder verwendet.',
  'The largest of STANDING, by the same weeks: never more than all starts together, and never less than the largest that stands at all. Buy for it and not for the sum; what breaks on the way comes on top.':
    'Das Größte von STANDING, nach denselben Wochen: nie mehr als alle Sätze zusammen und nie weniger als der größte, der überhaupt steht. Kaufen Sie dafür und nicht für die Summe; was unterwegs kaputtgeht, kommt hinzu.',
  peak: 'Spitze',
  'the most that stand in one week': 'was in einer Woche höchstens steht',
  'all starts together': 'alle Sätze zusammen',
  'the largest start that stands': 'der größte Satz, der steht',
  'Of 40, 25 and 30 trays at most 65 stand at once, since the first are free when the last are stuck':
    'Von 40, 25 und 30 Platten stehen höchstens 65 auf einmal, denn die ersten sind frei, wenn die letzten gesteckt werden',
  'With a week for washing all 95 are needed': 'Mit einer Woche für das Waschen sind alle 95 nötig',
}
