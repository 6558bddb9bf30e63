import { type Browser, create } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

export interface Request {
  id: string;
  version: number;
  number: string;
  status: string;
  dueInstant: string | null;
  overdue: boolean;
  objectionsBy: string | null;
  incidents: { incident: string; held: boolean; hold?: string; notHeld?: string; ended?: object }[];
  productions: { id: string; head?: { size: number; root: string } }[];
  objections: { id: string }[];
  cautions: { key: string }[];
}

/** A letter that names no time, as it comes in. */
export const letter = (receivedAt: string, more: object = {}): object => ({
  kind: 'preservation-letter',
  from: 'N. Amparo',
  organization: 'Amparo and Vell, attorneys',
  receivedAt,
  way: 'certified-mail',
  receivedBy: 'Ruth Castellanos',
  asked: 'That the dock camera be kept.',
  due: 'unknown',
  ...more,
});

export async function logRequest(browser: Browser, body: object, key?: string): Promise<Request> {
  return bodyOf<Request>(await create(browser, '/api/requests', body, key).expect(201));
}

export async function readRequest(browser: Browser, { id }: Pick<Request, 'id'>): Promise<Request> {
  return bodyOf<Request>(await browser.get(`/api/requests/${id}`).expect(200));
}

/** Sends a step on the version that was read. */
export function step(browser: Browser, { id, version }: Request, what: string, body: object) {
  return browser.post(`/api/requests/${id}/${what}`).set('If-Match', `"${version}"`).send(body);
}
