import type { Outcome } from '../../../shared/determination/determination.js';
import type { Truth } from '../../../shared/kernel/truth.js';

const SVG = 'http://www.w3.org/2000/svg';
/** Full: yes or required. Half: not known yet. Empty: no or not required. */
const INSIDE: Readonly<Record<Outcome | Truth, string | null>> = {
  required: 'M2 2h12v12H2z',
  true: 'M2 2h12v12H2z',
  undetermined: 'M2 2h12L2 14z',
  unknown: 'M2 2h12L2 14z',
  'not-required': null,
  false: null,
};

/**
 * The square that stands beside a word, one sign for a duty and for a trigger. It is drawn, not coloured in, so
 * that it survives printing and needs no colour; the word beside it carries the meaning for a screen reader.
 */
export function sign(of: Outcome | Truth): SVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('class', 'sign');
  svg.setAttribute('aria-hidden', 'true');
  const inside = INSIDE[of];
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
