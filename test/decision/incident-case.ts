import { randomUUID } from 'node:crypto';
import type { Decision, Reopening } from '../../shared/decision/decision.js';
import type { DutyView } from '../../src/server/decision/decision.api.js';
import { type Browser, create } from '../accounts/house.js';

export const told = <T>(value: T) => ({ value, known: 'told' });

/** A craft of ours on Lake Texoma of which everything is known. */
export const craftOf = (id: string, others: object = {}) => ({
  id,
  ours: true,
  use: told('rental'),
  numbered: told('yes'),
  inspected: told('no'),
  documented: told('no'),
  motorized: told('yes'),
  completeLoss: told('no'),
  stateOfNumber: told('TX'),
  ...others,
});

export const operatorOf = (craft: string, others: object = {}) => ({
  id: `operator-${craft}`,
  craft,
  role: told('operator'),
  outcome: told('unhurt'),
  care: told('none'),
  ...others,
});

export const peopleWith = (people: object[], others: object = {}) => ({
  assessment: told('complete'),
  everyoneAccountedFor: told('yes'),
  operatorAbleToReport: told('yes'),
  people,
  ...others,
});

/** Everything known of a grounding of PWC 7 in Texas at a moment, and nothing that calls for a report. */
export const quietSections = (at: string): Record<string, object> => ({
  'time-and-place': {
    occurred: told({ at, precision: 'to-the-minute' }),
    states: told(['TX']),
    federalWaters: told('yes'),
  },
  craft: { craft: [craftOf('PWC-7')] },
  people: peopleWith([operatorOf('PWC-7')]),
  damage: { assessment: told('complete'), lines: [] },
  account: {
    casualtyTypes: told(['grounding']),
    involvesVesselOrEquipment: told('yes'),
    oilSheen: told('no'),
  },
  authorities: { officerAtScene: told('no'), officerFiledReport: told('no') },
});

/** One incident, spoken to over HTTP by somebody who signed in. */
export class IncidentCase {
  private readonly versions = new Map<string, number>([['call', 1]]);

  private constructor(
    readonly id: string,
    readonly browser: Browser,
  ) {}

  static async open(
    browser: Browser,
    call: object = { said: 'They hit the bottom.' },
  ): Promise<IncidentCase> {
    const answer = await create(browser, '/api/incidents', { call }).expect(201);
    return new IncidentCase((answer.body as { id: string }).id, browser);
  }

  /** The grounding of `quietSections`. */
  static async quietGrounding(browser: Browser, at: string): Promise<IncidentCase> {
    const one = await IncidentCase.open(browser);
    for (const [name, document] of Object.entries(quietSections(at))) await one.write(name, document);
    return one;
  }

  /** Writes a section whole, as it is known now. */
  async write(section: string, document: object): Promise<void> {
    const version = this.versions.get(section) ?? 0;
    const answer = await this.browser
      .put(`/api/incidents/${this.id}/sections/${section}`)
      .set('If-Match', `"${version}"`)
      .send({ document, ...(version > 0 && { reason: 'Learned later.' }) })
      .expect(200);
    this.versions.set(section, (answer.body as { version: number }).version);
  }

  async duties(browser = this.browser): Promise<{ determination: number; items: DutyView[] }> {
    const answer = await browser.get(`/api/incidents/${this.id}/duties`).expect(200);
    return answer.body as { determination: number; items: DutyView[] };
  }

  async duty(id: string, vessel: string | null = 'PWC-7'): Promise<DutyView> {
    const { items } = await this.duties();
    const found = items.find((one) => one.duty === id && one.vessel === vessel);
    if (found === undefined) throw new Error(`No ${id} among ${items.map(({ duty }) => duty).join(', ')}`);
    return found;
  }

  async decisions(): Promise<{ items: Decision[]; reopenings: Reopening[] }> {
    const answer = await this.browser.get(`/api/incidents/${this.id}/decisions`).expect(200);
    return answer.body as { items: Decision[]; reopenings: Reopening[] };
  }

  /** Signs on the determination that stands. */
  async sign(duty: string, what: object, others: object = {}) {
    const { determination } = await this.duties();
    return this.post('decisions', { determination, duty, vessel: 'PWC-7', ...what, ...others });
  }

  /** Signs that nothing is due on every duty of PWC 7 as it stands. */
  async signAll(what: object): Promise<void> {
    for (const { duty } of (await this.duties()).items) {
      const answer = await this.sign(duty, what);
      if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
    }
  }

  post(path: string, body: object, key: string = randomUUID(), browser = this.browser) {
    return create(browser, `/api/incidents/${this.id}/${path}`, body, key);
  }
}
