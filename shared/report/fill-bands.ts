import { valueOf } from '../call/known.js';
import type { ConditionsSection } from '../record/conditions-section.js';
import type { Quantity } from '../record/quantity-as-entered.js';
import { bandMeasure } from './band-measure.js';
import type { ReportLine } from './filled-report.js';
import type { Band, BandScale, FormBands } from './report-form.js';

/** What was measured, the word that somebody gave for it, and where that word is written. */
interface Measured {
  readonly measure: Quantity | undefined;
  readonly said: string | undefined;
  readonly path: string;
}

/**
 * The box that each form has for the wind or the water of the record. A measure at an edge that a form gives to two bands
 * is asked; the word that somebody who was there gave for it decides.
 * @example fillBands('water', { waves: { value: { amount: 2, unit: 'ft' }, known: 'saw' } }, [texas])[0]?.state // 'missing'
 */
export function fillBands(
  what: 'water' | 'wind',
  conditions: ConditionsSection,
  forms: readonly FormBands[],
): ReportLine[] {
  const measured: Measured =
    what === 'water'
      ? { measure: valueOf(conditions.waves), said: valueOf(conditions.water), path: '/water' }
      : { measure: valueOf(conditions.wind), said: undefined, path: '/wind' };
  return forms.flatMap((form) => {
    const told = tellBand(measured, form[what]);
    if (told === null) return [];
    const memory = form[what].basis === 'memory' ? ', its bands from memory' : '';
    return [
      {
        label: `${what === 'water' ? 'Water' : 'Wind'} as the form bands it`,
        subject: `${form.form}${memory}`,
        source: null,
        section: 'conditions' as const,
        path: measured.path,
        ...told,
      },
    ];
  });
}

function tellBand({ measure, said }: Measured, scale: BandScale): Pick<ReportLine, 'state' | 'text'> | null {
  const word = scale.bands.find(({ label }) => label.toLowerCase() === said?.trim().toLowerCase());
  const banded = measure === undefined ? null : bandMeasure(measure, scale);
  if (banded === null) return word === undefined ? null : { state: 'answered', text: tell(word) };
  if ('band' in banded) return { state: 'answered', text: tell(banded.band) };
  if (word !== undefined && banded.between.includes(word)) return { state: 'answered', text: tell(word) };
  const choice = banded.between.map(tell).join(' or ');
  return {
    state: 'missing',
    text: `${String(Math.round(banded.measure * 100) / 100)} ${scale.unit} is at an edge: ${choice}? Ask whoever was there.`,
  };
}

function tell({ label, words }: Band): string {
  return `${label} (${words})`;
}
