import type { MapWords } from '../en/map.js';

export const map: MapWords = {
  loading: 'Se está cargando el mapa…',
  failed:
    'No se pudo cargar el mapa. Necesita señal una vez; después abre sin ella. La lista contiene lo mismo.',
  zoomIn: 'Más cerca',
  zoomOut: 'Más lejos',
  markMiddle: 'Marcar el centro del mapa',
  withoutLines:
    'No se pudieron cargar los límites de los estados. Los nombres y puntos se muestran sin ellos.',
  limits:
    'Los límites de los estados (a rayas) están simplificados y pueden errar hasta 300 m: no deduzca de ellos en qué estado fue. No se dibujan las orillas.',
  withTiles:
    'Los límites de los estados (a rayas) están simplificados y pueden errar hasta 300 m: no deduzca de ellos en qué estado fue.',
};
