import * as L from 'leaflet';
import 'leaflet/dist/leaflet.css';
import type { StateLines } from '../../../shared/place/state-lines.js';
import { linesToDraw } from './lines-to-draw.js';
import type { MapPin, MapPlace, MapPoint, MapTiles } from './map-types.js';
import { statesInView } from './states-in-view.js';

interface MapHands {
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly pick: (id: string) => void;
  readonly tap: (point: MapPoint) => void;
}

/** The whole of the contiguous states, where nothing else says where to look. */
const EVERYWHERE: L.LatLngBoundsLiteral = [
  [25, -124],
  [49, -67],
];
const CLOSEST = 14;
const MARGIN: L.PointTuple = [48, 48];

const latLng = ({ latitude, longitude }: MapPoint): L.LatLngTuple => [latitude, longitude];

/** A map in an element: outlines, names, pins, and a mark. What it shows is set anew as often as it changes. */
export class DrawnMap {
  private readonly map: L.Map;
  private readonly names = L.layerGroup();
  private readonly states = L.layerGroup();
  private readonly pins = L.layerGroup();
  private readonly mark = L.layerGroup();
  private lines: StateLines | null = null;

  constructor(
    element: HTMLElement,
    private readonly hands: MapHands,
  ) {
    this.map = L.map(element, {
      attributionControl: false,
      zoomControl: false,
      // A page that is scrolled past a map shall not zoom it; there are buttons.
      scrollWheelZoom: false,
      zoomAnimation: false,
      fadeAnimation: false,
      markerZoomAnimation: false,
      inertia: false,
    });
    L.control.zoom({ zoomInTitle: hands.zoomIn, zoomOutTitle: hands.zoomOut }).addTo(this.map);
    L.control.scale().addTo(this.map);
    for (const layer of [this.states, this.names, this.pins, this.mark]) layer.addTo(this.map);
    this.map.on('moveend', () => this.nameStates());
    this.map.on('click', ({ latlng }) => {
      const { lat: latitude, lng: longitude } = latlng.wrap();
      this.hands.tap({ latitude, longitude });
    });
    this.map.fitBounds(EVERYWHERE);
  }

  showLines(lines: StateLines): void {
    this.lines = lines;
    const renderer = L.svg({ padding: 0.5 });
    L.polyline(linesToDraw(lines), { className: 'state-line', interactive: false, renderer }).addTo(this.map);
    this.nameStates();
  }

  showTiles({ url, attribution }: MapTiles): void {
    const named = document.createElement('span');
    named.textContent = attribution;
    L.tileLayer(url, { attribution: named.innerHTML, maxZoom: 19 }).addTo(this.map);
    L.control.attribution({ prefix: false }).addTo(this.map);
  }

  showPlaces(places: readonly MapPlace[]): void {
    this.names.clearLayers();
    for (const place of places) this.names.addLayer(label(place, 'map-place'));
  }

  showPins(pins: readonly MapPin[], picked: string | null): void {
    this.pins.clearLayers();
    for (const pin of pins) this.pins.addLayer(this.pinOf(pin, pin.id === picked));
  }

  showMark(point: MapPoint | null): void {
    this.mark.clearLayers();
    if (point !== null) this.mark.addLayer(label({ ...point, name: '' }, 'map-mark'));
  }

  /** Has all of them in view. */
  lookAtAll(points: readonly MapPoint[]): void {
    if (points.length > 0) {
      this.map.fitBounds(L.latLngBounds(points.map(latLng)), { maxZoom: CLOSEST, padding: MARGIN });
    }
  }

  lookAt(point: MapPoint): void {
    this.map.panTo(latLng(point), { animate: false });
  }

  get middle(): MapPoint {
    const { lat: latitude, lng: longitude } = this.map.getCenter().wrap();
    return { latitude, longitude };
  }

  remove(): void {
    // A change of size is told a moment later, and by then there may be no map to look at.
    this.map.off('moveend');
    this.map.remove();
  }

  /** A button, since that is what can be pressed with everything that people press with. */
  private pinOf(pin: MapPin, picked: boolean): L.Marker {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'map-pin';
    button.textContent = String(pin.number);
    button.setAttribute('aria-label', pin.name);
    button.setAttribute('aria-pressed', String(picked));
    button.addEventListener('click', () => this.hands.pick(pin.id));
    L.DomEvent.disableClickPropagation(button);
    return marker(pin, button, picked ? 1000 : 0);
  }

  private nameStates(): void {
    this.states.clearLayers();
    if (this.lines === null) return;
    const bounds = this.map.getBounds();
    const view = {
      south: bounds.getSouth(),
      west: bounds.getWest(),
      north: bounds.getNorth(),
      east: bounds.getEast(),
    };
    for (const state of statesInView(this.lines, view)) this.states.addLayer(label(state, 'map-state'));
  }
}

function label(place: MapPlace, className: string): L.Marker {
  const words = document.createElement('span');
  words.className = className;
  words.textContent = place.name;
  return marker(place, words, 0);
}

function marker(point: MapPoint, html: HTMLElement, zIndexOffset: number): L.Marker {
  const icon = L.divIcon({ className: 'map-thing', html, iconSize: [0, 0] });
  return L.marker(latLng(point), { icon, interactive: false, keyboard: false, zIndexOffset });
}
