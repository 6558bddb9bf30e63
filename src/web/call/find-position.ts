/** What the phone said of its position. */
export type Found =
  | {
      readonly kind: 'found';
      readonly latitude: number;
      readonly longitude: number;
      readonly accuracyM: number;
    }
  | { readonly kind: 'refused' | 'not-found' };

const LONGEST_MS = 20_000;
/** About a metre; more digits would say more than the phone knows. */
const DIGITS = 5;

/** Asks the phone where it is; the browser asks the person first. */
export function findPosition(): Promise<Found> {
  if (!('geolocation' in navigator)) return Promise.resolve({ kind: 'not-found' });
  return new Promise((resolve) => {
    navigator.geolocation.getCurrentPosition(
      ({ coords }) =>
        resolve({
          kind: 'found',
          latitude: Number(coords.latitude.toFixed(DIGITS)),
          longitude: Number(coords.longitude.toFixed(DIGITS)),
          accuracyM: Math.ceil(coords.accuracy),
        }),
      ({ code, PERMISSION_DENIED }) =>
        resolve({ kind: code === PERMISSION_DENIED ? 'refused' : 'not-found' }),
      { enableHighAccuracy: true, timeout: LONGEST_MS, maximumAge: 0 },
    );
  });
}
