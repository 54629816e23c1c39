/** The pictures of the window in the guide: what they show, for eyes and for ears. In German; the pictures themselves are in English. */

import type { windowPictures as english } from '../english/window-pictures.ts';

export const windowPictures: typeof english = {
  readTheOdds: {
    alt: 'Der Rat für ein langes Par 3: der Schläger, wie weit er trägt und wohin, die Schläge im Mittel und ein Balken mit den Aussichten auf Par oder besser, Bogey, Doppelbogey oder schlechter. Darunter eine Tabelle von Schlägen; die nächsten sind als zu knapp für eine Entscheidung gekennzeichnet.',
    caption: 'Was zu spielen ist, mit den Aussichten, auf Loch 16 der Demo.',
  },
  moveTheAim: {
    alt: 'Ein Teil der Karte: eine Linie vom Ball zu einem Ring, zwei Ellipsen um den Ring, Bälle als Punkte, einige als Kreuze in einem Teich; Zahlen nennen die Entfernung zum Teich und den Rest bis zum Loch.',
    caption: 'Das Ziel ist der Ring: ziehen, oder mit Tab markieren und mit den Pfeiltasten bewegen.',
  },
  enterShots: {
    alt: 'Zeilen zum Eintippen von Schlägen: Schläger, Schwung, Carry, Abweichung von der Linie, gesamte Länge. Ein leer gelassener Schläger wiederholt den darüber. Darunter fügt ein Knopf vier Schläge hinzu.',
    caption: 'Vier eingetippte Schläge, bevor sie hinzukommen.',
  },
  drawAHole: {
    alt: 'Links, was gezeichnet werden kann, gewählt ist der Bunker. Auf der Karte eine Spiellinie vom Abschlag zum Grün, ein Fairway, eine Penalty Area mit rotem Rand und ein Bunker mit bisher vier Ecken.',
    caption: 'Ein Bunker entsteht: jeder Klick ist eine Ecke, die Eingabetaste schließt ihn.',
  },
  printTheCard: {
    alt: 'Die Karte eines Lochs: die Zeichnung mit dem Ziel und seinen Ellipsen, Entfernungen, daneben was zu spielen ist, wohin, welcher Fehler weniger kostet, was bleibt und warum; unten Kästchen für den Score.',
    caption: 'Die Karte eines Lochs auf A6.',
  },
  afterTheRound: {
    alt: 'Die letzten Zeilen einer eingetippten Runde mit Score, Putts, Schläger vom Abschlag und Ende des Abschlags; darunter die Summe gegen die erwartete und wie viele Runden nach diesem Plan so niedrig oder niedriger enden.',
    caption: 'Eine eingetippte Runde, und was sie gegen den Plan sagt.',
  },
};
