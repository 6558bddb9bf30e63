import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import {
  ABOUT,
  HAND_OVER_SENT,
  ITEM_SENT,
  OUTSIDE_SENT,
  UPLOAD_SENT,
} from '../../src/server/evidence/evidence-examples.js';
import { type Browser, change, create, describeHouse } from '../accounts/house.js';
import { evidenceOf, finish, openIncident, sendPiece, startUpload } from './evidence-desk.js';
import { sample } from './samples.js';

interface ApiDocument {
  paths: Record<string, Record<string, { tags?: string[] }>>;
  components: { schemas: Record<string, { examples?: unknown[] }> };
}

const AT = '/api/incidents/{id}';
const PHOTO = sample('photo-with-position.jpg');

describeHouse('what evidence answers', (house) => {
  let document: ApiDocument;
  let ajv: Ajv2020;
  let manager: Browser;
  let incident: string;
  beforeAll(async () => {
    document = (await house().browser().get('/api/openapi.json')).body as ApiDocument;
    ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    manager = await house().signedIn('manager');
    incident = await openIncident(manager);
  });

  const validator = (tokens: string[]): ValidateFunction => {
    const pointer = tokens.map((token) =>
      encodeURIComponent(token.replaceAll('~', '~0').replaceAll('/', '~1')),
    );
    return ajv.compile({ $ref: `http://desk/#/${pointer.join('/')}` });
  };
  const seen = new Set<string>();
  const see = async (
    method: string,
    path: string,
    answer: PromiseLike<{ status: number; body: unknown; headers: Record<string, string> }>,
  ): Promise<{ id: string }> => {
    const { status, body, headers } = await answer;
    const route = `${method} ${AT}${path}`;
    seen.add(route);
    const at = ['paths', `${AT}${path}`, method.toLowerCase(), 'responses', String(status)];
    // Throws where the document has no such answer.
    validator(at);
    const isText = (headers['content-type'] ?? '').includes('json');
    if (isText) {
      const type = status < 400 ? 'application/json' : 'application/problem+json';
      const validate = validator([...at, 'content', type, 'schema']);
      expect([route, validate(body), validate.errors]).toEqual([route, true, null]);
    }
    return body as { id: string };
  };

  it('is what the OpenAPI document says, on every route of it', async () => {
    const files = evidenceOf(incident);
    const uploads = `${files}/uploads`;
    const sent = { ...UPLOAD_SENT, size: PHOTO.length, sha256: undefined };
    const { id } = await see('POST', '/evidence/uploads', create(manager, uploads, sent));
    await see('GET', '/evidence/uploads/{upload}', manager.get(`${uploads}/${id}`));
    const piece = sendPiece(manager, incident, id, 0, PHOTO);
    await see('PATCH', '/evidence/uploads/{upload}', piece);
    await see('PATCH', '/evidence/uploads/{upload}', sendPiece(manager, incident, id, 7, PHOTO));
    await see('POST', '/evidence/uploads/{upload}/finish', finish(manager, incident, id));
    await see('DELETE', '/evidence/uploads/{upload}', manager.delete(`${uploads}/${id}`));
    const unfinished = await startUpload(manager, incident, 10);
    await see('POST', '/evidence/uploads/{upload}/finish', finish(manager, incident, unfinished));
    await see('GET', '/evidence', manager.get(files));
    await see('GET', '/evidence/{file}', manager.get(`${files}/${id}`));
    await see('GET', '/evidence/{file}/original', manager.get(`${files}/${id}/original`));
    await see('GET', '/evidence/{file}/previews/{edge}', manager.get(`${files}/${id}/previews/320`));
    const words = { about: ABOUT, reason: 'Says which craft' };
    await see('PATCH', '/evidence/{file}', change(manager, `${files}/${id}`, 1, words));
    await see('PATCH', '/evidence/{file}', change(manager, `${files}/${id}`, 1, words));
    const wrong = manager.post(`${files}/${id}/withdrawal`).send({ reason: 'Wrong' });
    await see('POST', '/evidence/{file}/withdrawal', wrong);
    await see('GET', '/evidence', manager.get(files));

    const custody = `/api/incidents/${incident}/custody`;
    const item = await see('POST', '/custody', create(manager, custody, ITEM_SENT));
    const handOver = create(manager, `${custody}/${item.id}/hand-overs`, HAND_OVER_SENT);
    await see('POST', '/custody/{item}/hand-overs', handOver);
    await see('GET', '/custody', manager.get(custody));

    const outside = `/api/incidents/${incident}/outside-evidence`;
    const camera = await see('POST', '/outside-evidence', create(manager, outside, OUTSIDE_SENT));
    const put = manager.put(`${outside}/${camera.id}`).set('If-Match', '"1"').send(OUTSIDE_SENT);
    await see('PUT', '/outside-evidence/{item}', put);
    await see('GET', '/outside-evidence', manager.get(outside));

    const routes = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods)
        .filter(([, { tags }]) => tags?.includes('evidence') === true)
        .map(([method]) => `${method.toUpperCase()} ${path}`),
    );
    expect([...seen].sort()).toEqual(routes.sort());
  });

  it('has examples that are what they exemplify', () => {
    const exemplified = Object.entries(document.components.schemas)
      .filter(([name]) => /^(Evidence|Custody|HandOver|Outside)/.test(name))
      .flatMap(([name, { examples = [] }]) => examples.map((example) => ({ name, example })));
    expect(exemplified.length).toBeGreaterThan(8);
    for (const { name, example } of exemplified) {
      const validate = validator(['components', 'schemas', name]);
      expect([name, validate(example), validate.errors]).toEqual([name, true, null]);
    }
  });

  describe('when it refuses', () => {
    const logged: string[] = [];
    const note = (chunk: unknown): boolean => logged.push(String(chunk)) > 0;
    beforeAll(() => {
      vi.spyOn(process.stdout, 'write').mockImplementation(note);
      vi.spyOn(process.stderr, 'write').mockImplementation(note);
    });
    afterAll(() => void vi.restoreAllMocks());

    it('and when it logs, repeats nothing of a file: not its name, its words, its metadata or its bytes', async () => {
      const planted = [
        'PlantedName',
        'PlantedCaption',
        'PlantedTaker',
        'PlantedType',
        'PlantedBytes',
        'Planted Artist',
      ];
      const about = { caption: 'PlantedCaption', takenBy: 'PlantedTaker' };
      const sent = { name: 'PlantedName.jpg', type: 'image/PlantedType', about };
      const broken = Buffer.concat([PHOTO.subarray(0, 1200), Buffer.from('PlantedBytes')]);
      const page = Buffer.from('<html>PlantedBytes</html>');
      const answers: { status: number; body: unknown }[] = [];
      for (const bytes of [broken, page, Buffer.from('MZ PlantedBytes')]) {
        const id = await startUpload(manager, incident, bytes.length, { ...sent, sha256: '0'.repeat(64) });
        answers.push(
          await sendPiece(manager, incident, id, 3, bytes),
          await finish(manager, incident, id),
          await sendPiece(manager, incident, id, 0, Buffer.concat([bytes, bytes])),
          await sendPiece(manager, incident, id, 0, bytes),
          await finish(manager, incident, id),
          await create(manager, `${evidenceOf(incident)}/uploads`, {
            ...sent,
            size: 1,
            about: { ...about, people: 'x' },
          }),
        );
      }
      const id = await startUpload(manager, incident, broken.length, sent);
      await sendPiece(manager, incident, id, 0, broken);
      expect((await finish(manager, incident, id)).status).toBe(201);
      answers.push(await manager.get(`${evidenceOf(incident)}/${id}/previews/320`));
      const failed = answers.filter(({ status }) => status >= 400);
      expect(failed.length).toBeGreaterThan(14);
      const said = failed.map(({ body }) => JSON.stringify(body)).join('\n') + logged.join('\n');
      expect(planted.filter((secret) => said.includes(secret))).toEqual([]);
    });
  });
});
