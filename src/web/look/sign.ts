/** How full the square is: yes or required, not known yet, no or not required. */
export type Fill = 'full' | 'half' | 'empty';

const SVG = 'http://www.w3.org/2000/svg';
const INSIDE: Readonly<Record<Fill, string | null>> = {
  full: 'M2 2h12v12H2z',
  half: 'M2 2h12L2 14z',
  empty: null,
};

/**
 * The square that stands beside a word, one sign for a duty and for a trigger. It is drawn, not coloured in, so
 * that it survives printing and needs no colour; the word beside it carries the meaning for a screen reader.
 */
export function sign(fill: Fill): SVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('class', 'sign');
  svg.setAttribute('aria-hidden', 'true');
  const inside = INSIDE[fill];
  if (inside !== null) svg.append(path(inside, 'sign-inside'));
  svg.append(path('M2 2h12v12H2z', 'sign-edge'));
  return svg;
}

function path(d: string, name: string): SVGElement {
  const made = document.createElementNS(SVG, 'path');
  made.setAttribute('d', d);
  made.setAttribute('class', name);
  return made;
}
