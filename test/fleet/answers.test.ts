import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, expect, it } from 'vitest';
import {
  CRAFT_SENT,
  NOTE_SENT,
  PLACE_SENT,
  POLICY_SENT,
  STATION_SENT,
} from '../../src/server/fleet/fleet-examples.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';

interface Answer {
  status: number;
  body: unknown;
}

interface ApiDocument {
  paths: Record<string, Record<string, { tags?: string[] }>>;
  components: { schemas: Record<string, { examples?: unknown[] }> };
}

describeHouse('what the fleet answers', (house) => {
  let document: ApiDocument;
  let ajv: Ajv2020;
  let manager: Browser;
  let administrator: Browser;
  const seen = new Set<string>();

  beforeAll(async () => {
    document = (await house().browser().get('/api/openapi.json')).body as ApiDocument;
    ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    administrator = await house().signedIn('administrator');
    manager = await house().signedIn('manager');
  });

  const validator = (tokens: string[]): ValidateFunction => {
    const pointer = tokens.map((token) =>
      encodeURIComponent(token.replaceAll('~', '~0').replaceAll('/', '~1')),
    );
    return ajv.compile({ $ref: `http://desk/#/${pointer.join('/')}` });
  };

  const expectDocumented = async (route: string, answer: PromiseLike<Answer>): Promise<{ id: string }> => {
    const { status, body } = await answer;
    const [method = '', path = ''] = route.split(' ');
    const type = status < 400 ? 'application/json' : 'application/problem+json';
    const at = ['paths', path, method.toLowerCase(), 'responses', String(status), 'content', type, 'schema'];
    const validate = validator(at);
    expect([route, validate(body), validate.errors]).toEqual([route, true, null]);
    seen.add(route);
    return body as { id: string };
  };

  it('is what the OpenAPI document says, on every route of it', async () => {
    const made: [path: string, id: string, details: object][] = [];
    const keep = async (path: string, details: object) => {
      const { id } = await expectDocumented(`POST ${path}`, create(manager, path, details));
      made.push([path, id, details]);
      return id;
    };
    const stationId = await keep('/api/stations', STATION_SENT);
    const craftId = await keep('/api/craft', { ...CRAFT_SENT, stationId });
    await keep('/api/places', { ...PLACE_SENT, stationId });
    await keep('/api/policies', { ...POLICY_SENT, scheduledCraft: [craftId] });
    for (const [path, id, details] of made) {
      await expectDocumented(`GET ${path}`, manager.get(path));
      await expectDocumented(`GET ${path}/{id}`, manager.get(`${path}/${id}`));
      const replace = (retiredOn: string) =>
        manager
          .put(`${path}/${id}`)
          .set('If-Match', '"1"')
          .send({ ...details, retiredOn });
      await expectDocumented(`PUT ${path}/{id}`, replace('2027-01-31'));
      await expectDocumented(`GET ${path}/{id}/versions`, manager.get(`${path}/${id}/versions`));
      await expectDocumented(`PUT ${path}/{id}`, replace('2027-02-28').expect(412));
    }
    await expectDocumented('GET /api/craft/matches', manager.get('/api/craft/matches?words=red'));

    const craft = `/api/craft/${craftId}`;
    await expectDocumented('POST /api/craft/{id}/notes', create(manager, `${craft}/notes`, NOTE_SENT));
    await expectDocumented('GET /api/craft/{id}/notes', manager.get(`${craft}/notes`));
    const steps = [
      { kind: 'taken-out', reason: 'Loose seat' },
      { kind: 'do-not-start', reason: 'Water in the engine' },
      { kind: 'held-by-agency', agency: 'Wardens' },
    ];
    for (const step of steps) {
      const taken = create(manager, `${craft}/service-steps`, step);
      await expectDocumented('POST /api/craft/{id}/service-steps', taken);
    }
    const refused = create(manager, `${craft}/service-steps`, { kind: 'released' });
    await expectDocumented('POST /api/craft/{id}/service-steps', refused);
    await expectDocumented('GET /api/craft/{id}/service-steps', manager.get(`${craft}/service-steps`));
    await expectDocumented('GET /api/craft/{id}/service', manager.get(`${craft}/service`));

    const { browser: phone } = await house().device(administrator);
    await expectDocumented('GET /api/device/fleet', phone.get('/api/device/fleet'));

    const amount = create(administrator, '/api/release-amounts', { amountCents: 50_000 });
    await expectDocumented('POST /api/release-amounts', amount);
    await expectDocumented('GET /api/release-amounts', manager.get('/api/release-amounts'));

    const routes = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods)
        .filter(([, { tags }]) => tags?.includes('fleet') === true)
        .map(([method]) => `${method.toUpperCase()} ${path}`),
    );
    expect([...seen].sort()).toEqual(routes.sort());
  });

  it('has examples that are what they exemplify', () => {
    const names = Object.entries(document.components.schemas).filter(([name]) =>
      /^(Fleet|Station|Policy|Craft|KeptVersion|ServiceStep|ReleaseAmount)/.test(name),
    );
    const exemplified = names.flatMap(([name, { examples = [] }]) =>
      examples.map((example) => ({ name, example })),
    );
    expect(exemplified.length).toBeGreaterThan(10);
    for (const { name, example } of exemplified) {
      const validate = validator(['components', 'schemas', name]);
      expect([name, validate(example), validate.errors]).toEqual([name, true, null]);
    }
  });

  it('reads in the examples what the service reads', async () => {
    const { id } = (await create(manager, '/api/stations', STATION_SENT)).body as { id: string };
    const craft = await create(manager, '/api/craft', { ...CRAFT_SENT, unitName: 'PWC 8', stationId: id });
    const example = document.components.schemas['FleetCraft']?.examples?.[0] as Record<string, unknown>;
    const { hullNumberReading, registrationNumberReading } = craft.body as Record<string, unknown>;
    expect({ hullNumberReading, registrationNumberReading }).toEqual({
      hullNumberReading: example['hullNumberReading'],
      registrationNumberReading: example['registrationNumberReading'],
    });
    const station = document.components.schemas['Station']?.examples?.[0] as Record<string, unknown>;
    const shown = (await manager.get(`/api/stations/${id}`)).body as Record<string, unknown>;
    expect({ ...shown, id: '' }).toEqual({ ...station, id: '' });
  });
});
