import type { Words } from '../words'

export const cautions: Words['cautions'] = {
  things: {
    dust: 'Perlite, Vermiculite und trockener Torf stauben: anfeuchten, Maske und Augenschutz tragen. Torfstaub brennt: Funken und Flammen fernhalten.',
    vermiculite:
      'Vermiculite kann Asbest enthalten, wie manche Säcke, die im Jahr 2000 im Handel waren: nach einer Prüfung fragen, feucht halten, im Zweifel geschlossen lassen.',
    sand: 'Sandstaub kann lungengängigen Quarz enthalten, der die Lunge vernarbt: feucht halten, Maske tragen und nie trocken kehren.',
    bed: 'Ein Beet aus nassem Sand ist schwer: auf den Boden damit, oder den Hersteller des Tisches fragen, welche Last er trägt.',
    bags: 'Fertige Mischungen in Säcken können Legionellen enthalten: an der frischen Luft und vom Gesicht weg öffnen, anfeuchten, Maske und Handschuhe tragen, Hände waschen.',
    moss: 'Sphagnum-Moos (das Moos, nicht der Torf) kann einen Pilz übertragen, der die Haut befällt: Handschuhe tragen und Wunden abdecken.',
    weight:
      'Säcke und nasse Mischung sind schwer, ein Big Bag wiegt 800 kg und mehr: mit Gerät oder zu zweit heben, nie darunter treten, und prüfen, was Tisch und Boden tragen.',
    lime: 'Kalk, Dünger und Netzmittel reizen Haut, Augen und Lunge: Handschuhe, Augenschutz und Maske tragen.',
    mixer: 'Nie in einen laufenden Mischer greifen: erst abschalten und gegen Einschalten sichern.',
    fibres:
      'Fasern von Steinwolle reizen Haut, Augen und Hals: die Würfel nass machen, Handschuhe, lange Ärmel, Augenschutz und Maske tragen.',
    acid: 'Säure für Steinwolle verätzt Haut und Augen: Handschuhe und Augenschutz tragen, die Säure ins Wasser gießen und nie umgekehrt; keine Chlorbleiche in der Nähe.',
    water:
      'Wasser, in dem Stecklinge stehen, verdirbt und zieht Insekten an: wechseln, und nie aus diesen Gefäßen trinken.',
    hormone:
      'Bewurzelungshormon schadet Augen, Haut und Lunge, und Lösungen in Alkohol fangen Feuer: Handschuhe, Augenschutz, bei Pulver eine Maske, lüften, keine Flammen.',
    mist: 'Sprühnebel kann Legionellen enthalten: sauberes Wasser nehmen, Tanks, Leitungen und Düsen reinigen und desinfizieren, nicht einatmen.',
    electricity:
      'Strom neben Wasser, Sprühnebel und Heizmatten kann töten: Arbeit für die Elektrofachkraft, mit Fehlerstrom-Schutzschalter; vorher abschalten.',
    disinfectant:
      'Desinfektionsmittel: zuerst reinigen, Handschuhe und Augenschutz tragen, lüften. Chlorbleiche: mit nichts als Wasser. Quartäre Ammoniumverbindungen verätzen: nach dem Etikett verdünnen.',
    steam:
      'Dampf verbrüht und steht unter Druck: geprüfter Kessel, Sicherheitsventil, abkühlen lassen. 30 Minuten bei 60 °C in der ganzen Mischung töten die meisten Krankheiten ab, nicht alle.',
  },
  deferring:
    'Nur die üblichen Hinweise: Halten Sie sich an Etikett, Sicherheitsdatenblatt und örtliche Vorschriften, und überlassen Sie Arbeiten, die eine Zulassung brauchen, zugelassenen Fachleuten.',
}
