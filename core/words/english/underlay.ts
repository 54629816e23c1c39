/** What lies under the drawing: pictures, map files, tile addresses. */

export const underlay = {
  kinds: { picture: 'picture' },
  over: 'Drawing over picture',
  layStep: ({ name }: { readonly name: string }) => `Lay ${name} under the map`,
  title: 'Under the drawing',
  nothing: 'Nothing',
  takeAwayStep: 'Take the background away',
  tileAddress: ({ name }: { readonly name: string }) => `${name} (tile address)`,
  bringIn: 'Bring in a picture or map file …',
  copying: 'Copying the file beside the course',
  stop: 'Stop',
  kindsOfFile:
    'PNG, JPEG or WebP with control points, GeoTIFF, PMTiles, MBTiles. The file is copied beside the course and read from there.',
  already: 'That lies under the drawing already.',
  gone: ({ name }: { readonly name: string }) =>
    `${name} is no longer beside the course. Bring it in again, or choose another background.`,
  tooLarge: ({ name, most }: { readonly name: string; readonly most: number }) =>
    `${name} is larger than ${most} MiB. Cut it down to the course, or make PMTiles of it.`,
  shorter: ({ name }: { readonly name: string }) => `${name} is shorter than it was. Bring it in again.`,
  pixels: ({
    name,
    width,
    height,
    most,
  }: {
    readonly name: string;
    readonly width: number;
    readonly height: number;
    readonly most: number;
  }) =>
    `${name} has ${width} × ${height} pixels; at most ${most} million are shown. Make it smaller, or make PMTiles of it.`,
  noPicture: ({ name }: { readonly name: string }) =>
    `${name} is no picture that can be shown. Save it as PNG or JPEG.`,
  brokeOff: ({ name }: { readonly name: string }) =>
    `Reading ${name} broke off, most likely because it takes more memory than there is. Make it smaller, or make PMTiles of it.`,
  shapesOnly: ({ name }: { readonly name: string }) =>
    `${name} holds no pictures but shapes. Make PMTiles of aerial pictures (PNG, JPEG or WebP).`,
  noPmtiles: ({ name, why }: { readonly name: string; readonly why: string }) =>
    `${name} cannot be read as PMTiles: ${why}.`,
  noPictures: ({ name, type }: { readonly name: string; readonly type: string }) =>
    `${name} holds no pictures but ${type}. Take MBTiles of aerial pictures.`,
  unknownAddress: ({ name }: { readonly name: string }) =>
    `The tile address “${name}” is not known on this computer. Enter it, or choose another background.`,
  termsNotAccepted: ({ name }: { readonly name: string }) =>
    `The terms of “${name}” are not accepted on this computer, so nothing is asked of it.`,
  fit: {
    'too-few-points': 'Two control points or more put the picture in its place.',
    'points-coincide': 'The control points lie on one another. Take places far apart.',
    'points-in-line': 'The control points lie in one line: stretching needs a third one beside it.',
    'not-finite': 'A control point is no place. Remove it and set it again.',
  },
  addPointStep: ({ number }: { readonly number: number }) => `Add control point ${number}`,
  clickPoint: ({ number }: { readonly number: number }) =>
    `Control point ${number}: click the same spot on the map.`,
  place: 'Place of the picture',
  oneMore: ' One more point would show how well they fit.',
  fitsTo: ({ metres }: { readonly metres: string }) => ` The points fit to ${metres} m (standard error).`,
  pixelIs: ({ metres, fit }: { readonly metres: string; readonly fit: string }) =>
    `A pixel is ${metres} m.${fit}`,
  point: 'Point',
  latLon: 'Latitude, longitude',
  offBy: 'Off by',
  remove: 'Remove',
  movePointStep: ({ number }: { readonly number: number }) => `Move control point ${number}`,
  removePoint: ({ number }: { readonly number: number }) => `Remove control point ${number}`,
  lengthStep: 'Set the length between control points',
  addPoint: 'Add a control point',
  fitStep: 'Change how the picture fits',
  stretch: 'Stretch as well as turn',
  latLonOf: ({ number }: { readonly number: number }) => `Latitude and longitude of control point ${number}`,
  writeLength: 'Write the length between both points in metres, from 1 to 20000.',
  fromTo: ({ metres }: { readonly metres: string }) => `From 1 to 2, now ${metres} m, it is`,
  set: 'Set',
  chooseSpot: 'Choose a spot in the picture',
  clickKnown: 'Click a spot that you know on the map',
  picture: 'The picture. Arrow keys move the cross, Shift makes it finer, Enter takes the spot.',
  address: {
    notKept: ({ message }: { readonly message: string }) => `The address is not kept yet: ${message}`,
    kept: 'Kept. The window may ask it after it has been loaded anew.',
    title: 'Tile addresses of your own',
    notAccepted: ' (terms not accepted)',
    forget: 'Forget',
    address: 'Address',
    attribution: 'Whom it asks to be named',
    accept: 'I have read its terms of use and accept them',
    keep: 'Keep the address',
    loadAnew: 'Load the window anew',
    giveName: 'Give it a name.',
    taken: 'Another address has that name already.',
    tooMany: ({ most }: { readonly most: number }) => `${most} addresses are kept; forget one first.`,
    writeAddress:
      'Write an https address with {z}, {x} and {y} once each, such as https://tiles.example/{z}/{x}/{y}.png.',
    writeWhom: 'Write whom it asks to be named; it stands on the map.',
    mustAccept: 'Nothing is asked of an address whose terms you have not accepted.',
  },
  geotiff: {
    unreadable: ({ why }: { readonly why: string }) => `It cannot be read as GeoTIFF: ${why}.`,
    coordinates: ({ grid }: { readonly grid: string }) =>
      `Its coordinates are in ${grid}; longitude and latitude, Web Mercator and UTM, each on WGS 84, are read. Convert it, or save it as a picture and set control points.`,
    noPlace: 'It does not say where it lies. Save it as PNG or JPEG and set control points.',
    tooLarge: ({ width, height }: { readonly width: number; readonly height: number }) =>
      `It has ${width} × ${height} pixels and no smaller copy of them within. Add overviews to it, or make it smaller.`,
    nowhere: 'It lies nowhere on earth.',
    damaged: 'its data is damaged',
  },
};
