import { type Browser, create, type House, type Person } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { bodyOf, openIncident } from '../follow-up/desk.js';
import { JPEG_PLACES, plantedJpeg, plantedPdf, plantedPng } from './planted-files.js';
import { Plants, plantedSections } from './planted-record.js';

/** Of a payment card, as its issuer publishes it for tests: the record refuses it, and a file may hold it all the same. */
export const CARD = '4111 1111 1111 1111';

export interface PlantedDesk {
  readonly plants: Plants;
  readonly incident: string;
  readonly reference: string;
  readonly manager: Browser;
  readonly counsel: Browser;
  /** Who wrote and brought everything: nobody else does, so that their name tells that an author is named. */
  readonly staff: Person;
  readonly policy: string;
  /** Ids of the pictures at which somebody has to look. */
  readonly pictures: readonly string[];
  readonly originals: readonly Buffer[];
}

/**
 * An incident with a mark in every place that takes words: of the record, of everything kept beside it, and of the files.
 * Places beside the record are named by what they tell, and where two profiles' decisions meet, by both: `photo>author`.
 */
export async function plantedDesk(house: House): Promise<PlantedDesk> {
  const plants = new Plants();
  const [manager, administrator] = [await house.signedIn('manager'), await house.signedIn('administrator')];
  const staff = await house.person('staff');
  const asStaff = await house.signedIn(staff);
  const { id: seven } = bodyOf<{ id: string }>(
    await create(administrator, '/api/craft', { unitName: 'PWC 7', type: 'personal-watercraft' }).expect(201),
  );
  const { id: policy } = bodyOf<{ id: string }>(
    await create(administrator, '/api/policies', {
      ...{ number: 'LK-33010', insurer: 'Prairie Shore Mutual', firstDay: '2020-01-01' },
      ...{ lastDay: '2040-01-01', scheduledCraft: [seven] },
    }).expect(201),
  );
  const { id: incident, reference } = await openIncident(asStaff, house.now());
  const sections = plantedSections(plants) as { craft: { craft: [{ fleetCraft: string }] } };
  sections.craft.craft[0].fleetCraft = seven;
  const path = `/api/incidents/${incident}`;
  for (const [section, document] of Object.entries(sections)) {
    const { version } = bodyOf<{ version: number }>(await asStaff.get(`${path}/sections/${section}`));
    await asStaff
      .put(`${path}/sections/${section}`)
      .set('If-Match', `"${version}"`)
      .send({ document, reason: plants.at(`reason-for-change/${section}`) })
      .expect(200);
  }
  const files = await plantFiles(plants, asStaff, incident);
  const counsel = await plantBeside(plants, house, { manager, asStaff, incident });
  return { plants, incident, reference, manager, counsel, staff, policy, ...files };
}

async function plantFiles(plants: Plants, browser: Browser, incident: string) {
  const wordsFor = (kind: string, about: object = {}) => ({
    name: `${plants.at(`${kind}>file-words/name`)}.bin`,
    about: {
      caption: plants.at(`${kind}>file-words/caption`),
      takenBy: plants.at(`${kind}>author/taken by`),
      people: [],
      ...about,
    },
  });
  const inJpeg = Object.fromEntries(
    JPEG_PLACES.map((place) => [place, `${CARD} ${plants.at(`photo>metadata/${place}`)}`]),
  ) as Record<(typeof JPEG_PLACES)[number], string>;
  const jpeg = await plantedJpeg(inJpeg);
  const inPng = ['plain', 'compressed', 'international'].map((place) =>
    plants.at(`statement-original>metadata/${place}`),
  );
  const png = await plantedPng(inPng[0] ?? '', inPng[1] ?? '', inPng[2] ?? '');
  const restricted = await plantedPng(plants.at('restricted-file>metadata/plain'), '', '');
  const inPdf = ['page', 'information', 'attached'].map((place) => plants.at(`document/${place}`));
  const pdf = await plantedPdf(inPdf[0] ?? '', inPdf[1] ?? '', inPdf[2] ?? '');
  const photo = await upload(browser, incident, jpeg, wordsFor('photo'));
  const statement = await upload(browser, incident, png, wordsFor('statement-original', { statement: 'i1' }));
  const closed = await upload(
    browser,
    incident,
    restricted,
    wordsFor('restricted-file', { restricted: true }),
  );
  await upload(browser, incident, pdf, wordsFor('document'));
  return { pictures: [photo.id, statement.id, closed.id], originals: [jpeg, png, restricted, pdf] };
}

/** What is kept beside the sections that people write, and the notes that a lawyer asked for. */
async function plantBeside(
  plants: Plants,
  house: House,
  { manager, asStaff, incident }: { manager: Browser; asStaff: Browser; incident: string },
): Promise<Browser> {
  const path = `/api/incidents/${incident}`;
  const at = house.now();
  const add = async (browser: Browser, what: string, body: object): Promise<{ id: string }> =>
    bodyOf<{ id: string }>(
      await create(browser, `${path}/${what}`, body).expect((answer) => {
        if (answer.status >= 300) throw new Error(`${what}: ${answer.text}`);
      }),
    );
  const words = (kind: string, ...names: string[]) =>
    Object.fromEntries(names.map((name) => [name, plants.at(`${kind}/${name}`)]));
  const thing = await add(
    asStaff,
    'custody',
    words('custody', 'what', 'foundWhere', 'foundBy', 'keptWhere', 'seal'),
  );
  await add(asStaff, `custody/${thing.id}/hand-overs`, {
    ...words('custody', 'from', 'to', 'why', 'seal', 'keptWhere'),
    at,
  });
  await add(asStaff, 'outside-evidence', {
    ...{ kind: 'dock-camera', state: 'asked' },
    ...words('outside-evidence', 'what', 'holder', 'howToReach', 'askedBy', 'answer'),
    ...words('outside-evidence', 'address', 'account', 'finder'),
  });
  await add(manager, 'holds', { reason: plants.at('hold/reason') });
  const { items } = bodyOf<{
    items: { duty: string; vessel: string | null; outcome: string; immediate: boolean }[];
    determination: number;
  }>(await manager.get(`${path}/duties`).expect(200));
  const report = items.find(({ duty }) => duty === 'us-tx/accident-report');
  const { determination } = bodyOf<{ determination: number }>(await manager.get(`${path}/duties`));
  const key = { duty: report?.duty ?? '', vessel: report?.vessel ?? null };
  await add(manager, 'decisions', { kind: 'report', determination, ...key, ...words('decision', 'reason') });
  await add(manager, 'filings', {
    ...{ form: 'report', at, way: 'online', jurisdiction: 'us-tx', filedBy: 'owner', satisfies: [key] },
    ...words('filing', 'to', 'filer', 'confirmation'),
    ...words('filing>decision', 'remark'),
  });
  await add(manager, 'operator-notices', {
    ...{ vessel: key.vessel, at, told: 'yes', saysFiled: 'unknown' },
    ...words('notice', 'toldBy', 'way', 'words'),
  });
  await add(manager, 'legal-calls', {
    ...{ at, with: 'counsel', duties: [key.duty] },
    ...words('privileged', 'who', 'said'),
  });
  const notes = { opinion: { ...words('decision', 'text'), alcoholOrDrugs: 'no' } };
  await manager
    .put(`${path}/reports/i1.owner/notes`)
    .set('If-Match', '"0"')
    .send({ ...notes, submitter: words('decision', 'name', 'address', 'phone') })
    .expect(200);
  const own = await add(manager, 'tasks', { ...words('task', 'title', 'why'), dueAt: at });
  await manager
    .post(`${path}/tasks/${own.id}/completion`)
    .set('If-Match', '"1"')
    .send({ evidence: 'It was done.' })
    .expect(200);
  const lawyer = await house.person('counsel');
  await manager.post(`${path}/counsel`).send({ account: lawyer.id }).expect(200);
  const request = await add(manager, 'counsel-requests', {
    ...words('privileged', 'counsel'),
    ...{ counselAccount: lawyer.id, requestedOn: '2026-06-14' },
  });
  await add(manager, `counsel-requests/${request.id}/entries`, words('privileged', 'words'));
  return house.signedIn(lawyer);
}
