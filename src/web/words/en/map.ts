/** The map beside the register and in a call. */
export const map = {
  loading: 'The map is being loaded…',
  failed:
    'The map could not be loaded. It needs signal once; after that it opens without. The list holds the same.',
  zoomIn: 'Closer',
  zoomOut: 'Further away',
  markMiddle: 'Mark the middle of the map',
  withoutLines: 'The state lines could not be loaded. Names and pins are shown without them.',
  limits:
    'State lines (dashed) are generalised and err by up to 300 m: never read from them which state it was. Shores are not drawn.',
  withTiles:
    'State lines (dashed) are generalised and err by up to 300 m: never read from them which state it was.',
};

export type MapWords = typeof map;
