/** The pictures of “How the numbers come about”. In German. */

import type { pictures as english } from '../english/pictures.ts';

export const pictures: typeof english = {
  flightInWind: {
    alt: 'Fünf Flugbahnen eines Eisens 7. Gegen 10 m/s Wind fliegt es am höchsten und kürzesten, mit dem Wind am flachsten und weitesten; der Wind nimmt mehr, als er gibt.',
    caption:
      'Ein Schlag mit dem Eisen 7 (120 mph, 7097 U/min, Dewhurst 2015; 16,3°, aus dem Gedächtnis) bei fünf Winden, gezeichnet vom Flug dieses Programms: Widerstand und Auftrieb nach Smits und Smith 1994.',
    x: 'Entfernung, m',
    y: 'Höhe, m',
    labels: {
      against10: '10 m/s von vorn',
      against5: '5 m/s von vorn',
      still: 'Windstille',
      behind5: '5 m/s von hinten',
      behind10: '10 m/s von hinten',
    },
  },
  dragAndLift: {
    alt: 'Der Auftrieb steigt mit dem Drall, von 0,20 beim Drallverhältnis 0,08 auf 0,28 bei 0,2. Der Widerstand steigt langsam mit, von 0,31 auf 0,33 bei der höheren Reynolds-Zahl und von 0,24 auf 0,26 bei der niedrigeren.',
    caption:
      'Die verwendeten Beiwerte über den gemessenen Drallen: Smits und Smith 1994, Science and Golf II. Drallverhältnis ist Drall × Radius / Geschwindigkeit; schnell und langsam sind Reynolds-Zahlen von 210 000 und 70 000.',
    x: 'Drallverhältnis',
    y: 'Beiwert',
    labels: {
      lift: 'Auftrieb',
      dragFast: 'Widerstand, schneller Ball',
      dragSlow: 'Widerstand, langsamer Ball',
    },
  },
  runByGround: {
    alt: 'Auslauf nach der Landung über dem Carry, für fünf Böden. Lange Schläge laufen auf festem Fairway weit und im Rough kaum; kurze Eisen bleiben überall bald liegen.',
    caption:
      'Auslauf eines Vorgabe-Bags (Mann, Handicap 15) von der Landung bis zur Ruhe: Sprünge nach Penner 2002, auf Grüns gemessen; weicherer und längerer Boden nach üblicher Praxis, am Course Rating geprüft.',
    x: 'Carry in m',
    y: 'Auslauf, m',
    labels: {
      fairwayFirm: 'Fairway, fest',
      fairway: 'Fairway, mittel',
      fairwaySoft: 'Fairway, weich',
      green: 'Grün, 10 ft',
      rough: 'im Rough',
    },
  },
  captureSpeed: {
    alt: 'Eine Parabel: in der Lochmitte darf ein Putt noch 1,63 m/s haben, am Rand nichts mehr.',
    caption:
      'Der schnellste Putt, der fällt, je nachdem, wo er am Loch vorbeikäme, dessen Ränder bei 54 mm liegen: Holmes 1991 in der Mitte, Penner 2002 daneben (beide aus dem Gedächtnis).',
    x: 'neben der Lochmitte, mm',
    y: 'Geschwindigkeit, m/s',
    labels: { fastest: 'schnellster, der fällt' },
  },
  makeShare: {
    alt: 'Anteil gelochter Putts über der Entfernung. Das Modell für Tourspieler läuft durch die gezählten Anteile: etwa 99 % aus 0,6 m, die Hälfte aus 2,4 m, 6 % aus 10 m. Handicap-Spieler liegen darunter.',
    caption:
      'Gelochte Putts: das Modell aus Richtung und Länge (Gelman und Nolan 2002, Gelman 2019) und gezählte Putts der Tour (Broadie 2018, abgedruckt in Gelman 2019).',
    x: 'Entfernung, m',
    y: 'gelocht, %',
    labels: {
      tour: 'Tour, Modell',
      handicap5: 'Handicap 5, Vorgabe',
      handicap25: 'Handicap 25, Vorgabe',
      counted: 'Tour, gezählt',
    },
  },
  lieEllipses: {
    alt: 'Vier Ellipsen, wo ein Eisen 7 landet. Vom Fairway ist sie am kleinsten und am weitesten; aus dem Rough etwas kürzer und breiter; aus langem Rough und Sand viel kürzer und am breitesten.',
    caption:
      'Die Hälfte der guten Treffer eines Eisens 7 landet innerhalb (Vorgabe Mann, Handicap 15). Was Lagen bewirken, ist übliche Praxis, geprüft an den Schlägen, die Tourspieler aus Rough und Sand verlieren (Broadie 2012).',
    x: 'links und rechts vom Ziel, m',
    y: 'Carry in Metern',
    labels: {
      fairway: 'vom Fairway',
      rough: 'aus dem Rough',
      longRough: 'langes Rough',
      bunker: 'aus dem Bunker',
    },
  },
};
