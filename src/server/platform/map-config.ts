/** Pictures of a map from another host, where the business has set one. */
export interface MapTiles {
  /** Address of a picture, with `{z}`, `{x}` and `{y}` in it. */
  readonly url: string;
  /** Who made them, as their maker asks to be named. */
  readonly attribution: string;
}

const EXAMPLE = 'https://tiles.example.org/{z}/{x}/{y}.png';

/**
 * Reads MAP_TILES_URL and MAP_TILES_ATTRIBUTION (none: maps are drawn from what the desk itself has).
 * @param faults gets a sentence for each that cannot be used
 */
export function readMapTiles(
  environment: Record<string, string | undefined>,
  faults: string[],
): MapTiles | null {
  const url = environment['MAP_TILES_URL']?.trim();
  const attribution = environment['MAP_TILES_ATTRIBUTION']?.trim();
  if (!url && !attribution) return null;
  if (!url || !attribution) {
    faults.push('MAP_TILES_URL and MAP_TILES_ATTRIBUTION go together: set both, or neither.');
    return null;
  }
  if (isTemplate(url)) return { url, attribution };
  faults.push(`MAP_TILES_URL is ${JSON.stringify(url)}: give an address such as ${EXAMPLE}.`);
  return null;
}

/** `tileHost('https://tiles.example.org/{z}/{x}/{y}.png')` is `'https://tiles.example.org'`. */
export function tileHost({ url }: MapTiles): string {
  return new URL(url).origin;
}

/** One host, by HTTPS, which goes into the policy of every page as it stands. */
function isTemplate(url: string): boolean {
  return (
    /^https:\/\/[a-z0-9.-]+(:\d{1,5})?\//i.test(url) &&
    ['{z}', '{x}', '{y}'].every((part) => url.includes(part))
  );
}
