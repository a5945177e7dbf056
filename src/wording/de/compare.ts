import type { Words } from '../words'

export const compare: Words['compare'] = {
  goToTheCell: 'Zur Zelle',
  perLiner: 'money per saleable liner',
  way: 'Art der Bewurzelung',
  chartPut: (sheet, free) => `Das Diagramm ist auf ${sheet}, bei ${free} oder darunter. Es folgt seinen Zellen.`,
  tablePut: (sheet, place) => `Das Diagramm ist auf ${sheet}, neben den Zellen, die es zeichnet: ${place}. Beide folgen Ihren Zellen.`,
  parts: {
    medium: { name: 'Substrat', text: 'das Substrat und das Gefäß, die Platte, das Beet oder die Matte, die es hält, über die Umläufe, mit Bruch und Zins' },
    reuse: { name: 'Wiederverwendung', text: 'Waschen und Auffüllen vor jedem späteren Umlauf' },
    bench: { name: 'Tisch', text: 'Fläche und Wärme, bis die Stecklinge bewurzelt sind' },
    labour: { name: 'Arbeit', text: 'Stecken, Mischen, Füllen und andere Arbeit' },
    other: { name: 'Andere Kosten', text: 'was sonst für einen Steckling ausgegeben wird' },
    losses: { name: 'Verluste', text: 'was die verkauften Jungpflanzen für die verlorenen Stecklinge tragen' },
  },
  partFrom: (name, text, headings) => `${name}: ${text}${headings.length === 0 ? '' : `. Hier gezählt: ${headings.map((heading) => `„${heading}“`).join(', ')}`}`,
  oneNumber: (ways) => `${ways.join(', ')}: Tisch und Arbeit stecken in „Andere Kosten“, weil die Arbeitsmappe sie nicht trennt. Um sie zu sehen, geben Sie die anderen Kosten als Zelle an, die nur andere addiert, etwa =B4+B5+B6, jede mit einer Überschrift daneben.`,
}
