import type { Response } from 'supertest';
import { type Browser, create } from '../accounts/house.js';

export interface Task {
  id: string;
  key: string;
  round: number;
  state: string;
  version: number;
  title: string;
  dueAt: string | null;
  escalates: boolean;
  assignee: string | null;
  acknowledgedBy: string | null;
  overdue: boolean;
}

export interface Happened {
  kind: string;
  words: string | null;
  person: string;
  evidenceIds: string[] | null;
  aboutAccountId: string | null;
}

export const bodyOf = <T>({ body }: Pick<Response, 'body'>): T => body as T;

const saw = <T>(value: T) => ({ value, known: 'saw' });

export const STITCHED = {
  id: 'p1',
  role: saw('operator'),
  craft: 'c1',
  outcome: saw('injured'),
  care: saw('beyond-first-aid'),
};
export const UNHURT = { id: 'p1', role: saw('operator'), craft: 'c1', outcome: saw('unhurt') };
export const DEAD = { id: 'p2', role: saw('passenger'), craft: 'c1', outcome: saw('died') };

export const peopleOf = (...people: object[]) => ({
  everyoneAccountedFor: saw('yes'),
  operatorAbleToReport: saw('yes'),
  assessment: saw('complete'),
  people,
});

/** An incident of one of our PWCs in Texas, an hour ago. */
export async function openIncident(
  browser: Browser,
  now: string,
): Promise<{ id: string; reference: string }> {
  const call = { said: 'help, PWC 7', craftNamed: ['PWC 7'] };
  const incident = bodyOf<{ id: string; reference: string }>(
    await create(browser, '/api/incidents', { call }).expect(201),
  );
  const at = new Date(Date.parse(now) - 3_600_000).toISOString();
  await write(browser, incident.id, 'time-and-place', {
    occurred: saw({ at, precision: 'to-the-minute' }),
    states: saw(['TX']),
  });
  await write(browser, incident.id, 'craft', {
    craft: [{ id: 'c1', ours: true, name: 'PWC 7', use: saw('rental'), completeLoss: saw('no') }],
  });
  return incident;
}

/** Writes a section on whatever version it has now. */
export async function write(
  browser: Browser,
  incidentId: string,
  section: string,
  document: object,
): Promise<void> {
  const path = `/api/incidents/${incidentId}/sections/${section}`;
  const before = await browser.get(path);
  const version = bodyOf<{ version?: number }>(before).version ?? 0;
  const reason = 'It became known.';
  await browser.put(path).set('If-Match', `"${version}"`).send({ document, reason }).expect(200);
}

export async function tasksOf(browser: Browser, incidentId: string): Promise<Task[]> {
  return bodyOf<{ items: Task[] }>(await browser.get(`/api/incidents/${incidentId}/tasks`).expect(200)).items;
}

export async function taskOf(browser: Browser, incidentId: string, key: string, round = 1): Promise<Task> {
  const tasks = await tasksOf(browser, incidentId);
  const task = tasks.find((one) => one.key === key && one.round === round);
  if (task === undefined)
    throw new Error(`No ${key} (${round}) among ${tasks.map((one) => one.key).join(', ')}`);
  return task;
}

export async function eventsOf(browser: Browser, incidentId: string, taskId: string): Promise<Happened[]> {
  const path = `/api/incidents/${incidentId}/tasks/${taskId}`;
  return bodyOf<{ events: Happened[] }>(await browser.get(path).expect(200)).events;
}

/** Sends a step of a task on the version that was read. */
export function step(
  browser: Browser,
  incidentId: string,
  { id, version }: Task,
  what: string,
  body: object,
) {
  const path = `/api/incidents/${incidentId}/tasks/${id}/${what}`;
  const sent = what === 'assignee' ? browser.put(path) : browser.post(path);
  return sent.set('If-Match', `"${version}"`).send(body);
}
