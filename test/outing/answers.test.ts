import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { expect, it } from 'vitest';
import { OUTING_SCHEMAS } from '../../src/server/outing/outing.api.js';
import { create, describeHouse } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

interface ApiDocument {
  components: { schemas: Record<string, { examples?: unknown[] }> };
}

describeHouse('what out and back answers', (house) => {
  it('is what the OpenAPI document says, and so are its examples', async () => {
    const document = bodyOf<ApiDocument>(await house().browser().get('/api/openapi.json'));
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    const check = (schema: string, value: unknown): void => {
      const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
      expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
    };
    const staff = await house().signedIn('staff');
    const { browser: device } = await house().device(await house().signedIn('administrator'));
    const manager = await house().signedIn('manager');
    await create(manager, '/api/craft', { unitName: 'PWC 7', type: 'personal-watercraft' }).expect(201);

    const sent = { unit: 'PWC 7', dueBackAt: house().now(), renter: 'Dana Whitlock' };
    const outing = await create(staff, '/api/outings', sent).expect(201);
    check('Outing', outing.body);
    check('OutingWithEvents', (await staff.get(`/api/outings/${bodyOf<{ id: string }>(outing).id}`)).body);
    check('CraftWhereabouts', (await staff.get('/api/outings').expect(200)).body);
    const lost = await create(device, '/api/not-back', { unit: 'PWC 7' }).expect(201);
    check('NotBack', lost.body);
    const at = `/api/not-back/${bodyOf<{ id: string }>(lost).id}`;
    const stamp = { rung: 'search', stamp: { at: house().now(), how: 'pressed' } };
    check('NotBack', (await create(staff, `${at}/stamps`, stamp).expect(200)).body);
    check('NotBackWithEvents', (await staff.get(at).expect(200)).body);
    check('NotBackList', (await staff.get('/api/not-back').expect(200)).body);
    const count = await create(device, '/api/closing-counts', {}).expect(201);
    check('ClosingCount', count.body);
    const of = `/api/closing-counts/${bodyOf<{ id: string }>(count).id}`;
    check('ClosingCount', (await create(staff, `${of}/answers`, { unit: 'PWC 7', answer: 'in' })).body);
    check('ClosingCountList', (await staff.get('/api/closing-counts').expect(200)).body);
    check('ClosingCount', (await staff.post(`${of}/closing`).set('If-Match', '"2"').send().expect(200)).body);
    const list = { csv: `Unit,Due back\nPWC 7,${house().now()}` };
    check('OutingImported', (await create(staff, '/api/outing-lists', list).expect(201)).body);

    for (const name of Object.keys(OUTING_SCHEMAS)) {
      for (const one of document.components.schemas[name]?.examples ?? []) check(name, one);
    }
  });
});
