const METRES_PER_FOOT = 0.3048;
/** Metres as drawn, beside the feet in which the trade tells a distance. */
const feetOf = (metres: number): number => Math.round(metres / METRES_PER_FOOT);

/** The sentences of a sketch; `point` is a point of the compass, as `compassPoint` counts them. */
export const sceneWords = {
  en: {
    points: 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' '),
    north: 'N',
    metres: (count: number) => `${count} m`,
    length: (count: number) => `${count} m (${feetOf(count)} ft)`,
    direction: (point: string, degrees: number) => `${point} (${degrees}°)`,
    top: (direction: string) => `The top of the sheet is ${direction}.`,
    wide: (metres: string) => `The sheet is ${metres} wide.`,
    notToScale: 'Not to scale',
    wind: (direction: string) => `Wind from ${direction}`,
    current: (direction: string) => `Current toward ${direction}`,
    inMiddle: 'in the middle',
    away: (distance: string, point: string) => `${distance} ${point} of the middle`,
    tenths: (count: number) => `${count}/10 of the way to the edge,`,
    nowhere: 'place not known',
    heading: (direction: string) => `heading ${direction}`,
    noHeading: 'heading not known',
    noMovement: 'movement not known',
    run: (from: string, to: string) => `from ${from} to ${to}`,
    empty: 'Nothing is drawn yet.',
  },
  es: {
    points: 'N NNE NE ENE E ESE SE SSE S SSO SO OSO O ONO NO NNO'.split(' '),
    north: 'N',
    metres: (count: number) => `${count} m`,
    length: (count: number) => `${count} m (${feetOf(count)} ft)`,
    direction: (point: string, degrees: number) => `${point} (${degrees}°)`,
    top: (direction: string) => `Arriba de la hoja está el ${direction}.`,
    wide: (metres: string) => `La hoja tiene ${metres} de ancho.`,
    notToScale: 'No está a escala',
    wind: (direction: string) => `Viento desde ${direction}`,
    current: (direction: string) => `Corriente hacia ${direction}`,
    inMiddle: 'en el centro',
    away: (distance: string, point: string) => `${distance} al ${point} del centro`,
    tenths: (count: number) => `a ${count}/10 del camino al borde,`,
    nowhere: 'lugar desconocido',
    heading: (direction: string) => `rumbo ${direction}`,
    noHeading: 'rumbo desconocido',
    noMovement: 'movimiento desconocido',
    run: (from: string, to: string) => `desde ${from} hasta ${to}`,
    empty: 'Todavía no hay nada dibujado.',
  },
};

export type SceneWords = (typeof sceneWords)['en'];
