import { describe, expect, it } from 'vitest';
import { determine } from '../../shared/determination/determine.js';
import { describeRulePack } from '../../shared/law/describe-rule-pack.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { readRulePacks } from '../../src/server/law/law.api.js';
import { geography, quietGrounding } from '../determination/situation.js';
import { copyPacks, writePack } from './pack-folder.js';

/** An invented law: American Samoa has a code of its own and no pack here. */
const americanSamoa: RulePack = {
  jurisdiction: 'AS',
  name: 'American Samoa',
  agency: 'An invented agency',
  basis: 'read-primary',
  asOf: null,
  readOn: '2026-11-25',
  effectiveFrom: '2025-01-01',
  effectiveFromBasis: 'assumed',
  appliesTo: 'unknown',
  excludes: [],
  personalProperty: 'counts',
  officerReportExcuses: 'unknown',
  reportConfidential: 'unknown',
  noWrittenReport: false,
  report: {
    triggers: [
      {
        test: 'damage-total',
        readings: [
          {
            amountUsd: 750,
            comparison: 'at-least',
            basis: 'read-primary',
            source: 'an invented section',
            asOf: null,
          },
        ],
        note: '',
      },
    ],
    limits: [{ tests: ['damage-total'], time: { days: 5, dayKind: 'plain' }, from: 'occurrence', note: '' }],
    to: 'the invented agency',
    who: ['operator'],
    whoNote: '',
  },
  notices: [],
  liveryDuties: [],
  citations: [{ section: 'an invented section', url: 'https://law.example/as', kind: 'statute' }],
  doubts: [],
  holidays: [],
};

describe('a new jurisdiction', () => {
  it('needs one data file and no code: it is read, determined and printed', async () => {
    const folder = copyPacks();
    writePack(folder, 'as.json', americanSamoa);
    const packs = await readRulePacks(folder);
    expect(packs.map(({ jurisdiction }) => jurisdiction).slice(0, 6)).toEqual([
      'US',
      'AK',
      'AL',
      'AR',
      'AS',
      'AZ',
    ]);

    const facts: IncidentFacts = {
      ...quietGrounding(),
      place: { states: ['AS'], timeZone: 'Pacific/Pago_Pago' },
      damage: [{ id: 'd1', of: 'vessel', vessel: 'A', amount: 750 }],
    };
    const { duties } = determine(facts, { packs, geography, source: 'test' });
    expect(duties.find(({ id }) => id === 'us-as/accident-report')).toMatchObject({
      outcome: 'required',
      dueAt: '2026-06-18T05:20:00-11:00',
      authority: 'the invented agency',
    });
    expect(describeRulePack(americanSamoa)).toContain('of $750 or more.');
  });
});
