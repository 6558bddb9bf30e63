import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { expect, it } from 'vitest';
import { create, describeHouse } from '../accounts/house.js';
import { bodyOf, openIncident } from '../follow-up/desk.js';
import { letter, logRequest, type Request, step } from './request-desk.js';

describeHouse('what requests answer', (house) => {
  it('is what the OpenAPI document says, and so are its examples', async () => {
    const document = bodyOf<{ components: { schemas: Record<string, { examples?: unknown[] }> } }>(
      await house().browser().get('/api/openapi.json'),
    );
    const ajv = addFormats
      .default(new Ajv2020({ strict: false }))
      .addSchema({ ...document, $id: 'http://desk/' });
    const check = (schema: string, value: unknown): void => {
      const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
      expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
    };
    const manager = await house().signedIn('manager');
    const now = house().now();
    const { id } = await openIncident(manager, now);
    const why = { id, hold: false, reason: 'It names another day.' };
    const logged = await logRequest(manager, letter(now, { incidents: [why] }));
    check('LegalRequest', logged);
    const at = `/api/requests/${logged.id}`;
    const said = { at: now, to: 'N. Amparo', way: 'by courier', what: 'The packet.' };
    check('LegalRequest', (await create(manager, `${at}/objections`, said).expect(200)).body);
    const produced = await create(manager, `${at}/productions`, { ...said, incident: id }).expect(200);
    check('LegalRequest', produced.body);
    const status = { status: 'in-part', reason: 'The rest follows.' };
    const partly = bodyOf<Request>(
      await step(manager, bodyOf<Request>(produced), 'status', status).expect(200),
    );
    check('LegalRequest', partly);
    const reason = { reason: 'Another lake.' };
    check('LegalRequest', (await step(manager, partly, `incidents/${id}/removal`, reason).expect(200)).body);
    const paper = { from: 'A server', receivedAt: now, way: 'mail', incident: id };
    check('ServedPaper', (await create(manager, '/api/served-papers', paper).expect(201)).body);
    for (const [schema, path] of [
      ['LegalRequestPage', '/api/requests'],
      ['LegalRequestList', `/api/incidents/${id}/requests`],
      ['LegalRequestVersions', `${at}/versions`],
    ] as const) {
      check(schema, (await manager.get(path).expect(200)).body);
    }
    const named = /^(LegalRequest|ServedPaper)/;
    for (const [name, { examples = [] }] of Object.entries(document.components.schemas)) {
      if (named.test(name)) for (const one of examples) check(name, one);
    }
  });
});
