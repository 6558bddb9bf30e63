const EQUATORIAL_RADIUS_M = 6_378_137;
const ECCENTRICITY_SQUARED = 0.00669437999014;

/**
 * Metres of one degree of latitude and of longitude at a latitude, on the WGS 84 ellipsoid.
 * @example metresPerDegree(0) // { latitude: 110574.3, longitude: 111319.5 } to a tenth
 */
export function metresPerDegree(latitude: number): { latitude: number; longitude: number } {
  const radians = (latitude * Math.PI) / 180;
  const w = 1 - ECCENTRICITY_SQUARED * Math.sin(radians) ** 2;
  const degree = (EQUATORIAL_RADIUS_M * Math.PI) / 180;
  return {
    latitude: (degree * (1 - ECCENTRICITY_SQUARED)) / w ** 1.5,
    longitude: (degree * Math.cos(radians)) / Math.sqrt(w),
  };
}

/** Throws RangeError unless the two are a latitude from -90 to 90 and a longitude from -180 to 180. */
export function checkCoordinates(latitude: number, longitude: number): void {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
    throw new RangeError(`No place on Earth: latitude ${latitude}, longitude ${longitude}.`);
  }
}
