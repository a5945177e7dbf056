import type { Words } from '../words'

export const cautions: Words['cautions'] = {
  things: {
    dust: 'Perlite, Vermiculite und trockener Torf stauben: vorher anfeuchten, lüften, Maske und Augenschutz tragen. Torfstaub brennt: Funken, Flammen und heiße Lampen fernhalten.',
    vermiculite:
      'Vermiculite kann Asbest enthalten, und manche Säcke im Handel enthielten im Jahr 2000 welchen: beim Lieferanten nach einer Prüfung fragen, feucht halten und im Zweifel geschlossen lassen.',
    sand: 'Sandstaub kann lungengängigen Quarz enthalten, der die Lunge vernarbt: Sand feucht halten, eine Maske tragen und nie trocken kehren.',
    bed: 'Ein Beet aus nassem Sand ist schwer: auf den Boden damit, oder den Hersteller des Tisches fragen, welche Last er trägt.',
    bags: 'Fertige Mischungen und Kompost in Säcken können Legionellen enthalten: an der frischen Luft und vom Gesicht weg öffnen, anfeuchten, Maske und Handschuhe tragen und die Hände waschen.',
    moss: 'Sphagnum-Moos (das Moos, nicht der Torf) kann einen Pilz übertragen, der die Haut befällt: Handschuhe tragen und Wunden abdecken.',
    weight:
      'Säcke, nasse Mischung und nasser Sand sind schwer, und ein Big Bag wiegt 800 kg und mehr: mit Gerät oder zu zweit heben, nie unter eine hängende Last treten, und prüfen, was Tisch und Boden tragen.',
    lime: 'Kalk, Dünger und Netzmittel reizen Haut, Augen und Lunge: Handschuhe, Augenschutz und Maske tragen.',
    mixer: 'Nie in einen laufenden Mischer greifen: erst abschalten und gegen Einschalten sichern.',
    fibres:
      'Fasern von Steinwolle reizen Haut, Augen und Hals: die Würfel nass machen, Handschuhe, lange Ärmel und Augenschutz tragen, und eine Maske, wo es staubt.',
    acid: 'Säure zum Einweichen von Steinwolle verätzt Haut und Augen: Handschuhe und Augenschutz tragen, die Säure ins Wasser gießen und nie das Wasser in die Säure, und von Chlorbleiche fernhalten.',
    water:
      'Wasser, in dem Stecklinge stehen, verdirbt und zieht Insekten an: wechseln, und nie aus diesen Gefäßen trinken.',
    hormone:
      'Bewurzelungshormon schadet Augen, Haut und Lunge, und Lösungen in Alkohol fangen Feuer: Handschuhe und Augenschutz tragen, bei Pulver eine Maske, lüften, Flammen und Funken fernhalten.',
    mist: 'Sprühnebel kann Legionellen enthalten: sauberes Wasser nehmen, Tanks, Leitungen und Düsen reinigen und desinfizieren, und den Nebel nicht einatmen.',
    electricity:
      'Strom neben Wasser, Sprühnebel und Heizmatten kann töten: von einer Elektrofachkraft einrichten und prüfen lassen, mit Fehlerstrom-Schutzschalter, und abschalten, bevor man hineingreift.',
    disinfectant:
      'Desinfektionsmittel: zuerst reinigen, lüften, Handschuhe und Augenschutz tragen. Chlorbleiche mit nichts als Wasser mischen. Quartäre Ammoniumverbindungen verätzen Augen und Haut: nach dem Etikett verdünnen.',
    steam:
      'Dampf steht unter Druck und verbrüht: einen geprüften Kessel mit Sicherheitsventil nehmen, Abstand von Abdeckung und Schläuchen halten und die Mischung abkühlen lassen. 30 Minuten bei 60 °C in der ganzen Mischung töten die meisten Pflanzenkrankheiten ab, nicht alle, und sie kann danach wieder befallen werden.',
  },
  deferring:
    'Das sind die üblichen Hinweise: Halten Sie sich an Etikett, Sicherheitsdatenblatt und örtliche Vorschriften, und überlassen Sie Fachleuten, was eine Zulassung braucht.',
}
