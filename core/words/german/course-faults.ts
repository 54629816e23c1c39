/** What is wrong with a course, by the rules of the check. In German. */

import type { courseFaults as english } from '../english/course-faults.ts';
import { figures } from './figures.ts';

const { short } = figures;

export const courseFaults: typeof english = {
  reachesOutside: ({ remedy }) => `Reicht über die gezeichnete Platzgrenze hinaus. ${remedy}`,
  whollyOutside: ({ remedy }) => `Liegt ganz außerhalb der gezeichneten Platzgrenze. ${remedy}`,
  treesOutside: ({ count }) =>
    `${count} Bäume liegen außerhalb der gezeichneten Platzgrenze. Stehen sie dort, so lassen; sonst versetzen oder entfernen.`,
  treeOutside:
    'Ein Baum liegt außerhalb der gezeichneten Platzgrenze. Steht er dort, so lassen; sonst versetzen oder entfernen.',
  duplicateHole: ({ feature, hole }) =>
    `Objekt ${feature} ist schon Loch ${hole}. Einem der beiden ein anderes ref geben, oder es entfernen.`,
  offTee: ({ metres }) =>
    `Die Linie beginnt nicht an einem Abschlag. Auf einer Abschlagfläche (golf=tee) beginnen, oder höchstens ${metres} m von einer Teemarkierung.`,
  startsThere: 'Die Linie beginnt dort: die Richtung umdrehen, Abschlag zuerst.',
  drawOn: 'Bis zur Mitte des Grüns weiterzeichnen, oder das ref eines der beiden berichtigen.',
  offGreen: ({ feature, remedy }) => `Die Linie endet nicht auf ihrem Grün (Objekt ${feature}). ${remedy}`,
  markerOff:
    'Liegt auf keiner Abschlagfläche. Versetzen, oder die Fläche zeichnen und mit golf=tee versehen.',
  openRing: ({ ring }) =>
    `Ring ${ring} ist nicht geschlossen: Die letzte Stelle weicht von der ersten ab. Zum Planen schließt ihn eine gerade Linie; die erste Stelle am Ende wiederholen, oder das fehlende Stück zeichnen.`,
  moveInside: 'Nach innen versetzen, oder die Platzgrenze neu zeichnen.',
  lineOutside: ({ remedy }) => `Die Linie läuft außerhalb der gezeichneten Platzgrenze. ${remedy}`,
  namedOutside: ({ name, feature, remedy }) =>
    `„${name}“ (Objekt ${feature}) liegt außerhalb der gezeichneten Platzgrenze. ${remedy}`,
  greensOverlap: ({ area, hole, feature }) =>
    `${area} m² davon sind auch Grün von Loch ${hole} (Objekt ${feature}). Die Umrisse berichtigen; ein Grün, das zwei Löcher teilen, wird einmal gezeichnet, ohne ref.`,
  badPar: ({ par }) =>
    `Par ist ${par}; es muss eine ganze Zahl von 3 bis 6 sein. Par an der Linie golf=hole berichtigen.`,
  positionOff: ({ feature }) =>
    `Liegt nicht auf dem Grün (Objekt ${feature}). Dorthin versetzen, oder das ref berichtigen.`,
  selfCrossing: ({ lon, lat }) =>
    `Der Umriss kreuzt oder berührt sich bei Länge ${lon}, Breite ${lat}. Dort Punkte versetzen oder entfernen, bis er es nicht mehr tut.`,
  slopeOff: 'Liegt auf keinem Grün und sagt über keines etwas. Auf das Grün versetzen, oder entfernen.',
  slopeSteep: ({ slope, taken }) =>
    `Fällt um ${short(slope, 1)} %; ein Ball bliebe dort kaum liegen, und der Plan nimmt ${short(taken, 1)} %. Noch einmal messen, oder slope_percent bis ${short(taken, 1)} eintragen.`,
  badIndex: ({ index, most }) =>
    `Der Stroke-Index ist ${index}; er muss eine ganze Zahl von 1 bis ${most} sein. handicap an der Linie golf=hole berichtigen.`,
  sameIndex: ({ index, hole }) =>
    `Der Stroke-Index ${index} ist auch der von Loch ${hole}. handicap an einer der beiden Linien golf=hole berichtigen.`,
  noGreen: ({ hole }) =>
    `Kein Grün, also nicht zu planen; andere Löcher schon. Eines zeichnen und mit golf=green, ref=${hole} versehen.`,
  tooLarge: ({ metres, most }) =>
    `Linie, Abschläge und Fahnenpositionen liegen bis zu ${short(metres / 1000, metres < 10_000 ? 1 : 0)} km auseinander; bis ${short(most / 1000, 1)} km lässt sich planen. Die Koordinaten prüfen (Grad, Länge zuerst), und ob eine Teemarkierung oder Fahnenposition, die anderswo hingehört, die Nummer dieses Lochs trägt (ref).`,
  noPar: ({ par }) =>
    `Kein lesbares Par; ${par} ist aus der Länge angenommen. Par an der Linie golf=hole eintragen.`,
};
