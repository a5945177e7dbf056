import type { Words } from '../words'

export const cautions: Words['cautions'] = {
  things: {
    dust: 'Staub von Perlite, Vermiculite und trockenem Torf: vor dem Arbeiten anfeuchten und eine Maske tragen.',
    bags: 'Fertige Mischungen in Säcken können Legionellen enthalten: vom Gesicht weg öffnen, anfeuchten und die Hände waschen.',
    sand: 'Sandstaub enthält lungengängiges Quarz: feucht halten.',
    vermiculite: 'Alte Bestände von Vermiculite können Asbest enthalten: im Zweifel geschlossen lassen.',
    bed: 'Ein Beet aus nassem Sand ist schwer: auf den Boden oder auf einen Tisch, der dafür gebaut ist.',
    fibres:
      'Fasern von Steinwolle reizen Haut, Augen und Hals: die Würfel nass machen, Handschuhe und lange Ärmel tragen.',
    water:
      'Wasser, in dem Stecklinge stehen, verdirbt und zieht Insekten an: wechseln, und nie aus diesen Gefäßen trinken.',
    moss: 'Torfmoos kann eine Hautinfektion übertragen: Handschuhe tragen.',
    weight: 'Nasse Mischung ist schwer: prüfen, was ein Mensch und was ein Tisch tragen darf.',
    lime: 'Kalk, Dünger und Netzmittel reizen Haut, Augen und Lunge: Handschuhe, Augenschutz und Maske tragen.',
    mixer: 'Nie in einen laufenden Mischer greifen: erst abschalten und gegen Einschalten sichern.',
    disinfectant:
      'Desinfektionsmittel: zuerst reinigen, lüften, Handschuhe und Augenschutz tragen; Chlorbleiche nie mit Säure oder Ammoniak mischen.',
    steam: 'Dampf und heiße Mischung verbrühen: abkühlen lassen.',
  },
  deferring: 'Halten Sie sich an das Etikett und an die örtlichen Vorschriften.',
}
