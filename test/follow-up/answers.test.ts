import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { expect, it } from 'vitest';
import { create, describeHouse } from '../accounts/house.js';
import { bodyOf, openIncident, peopleOf, STITCHED, taskOf, write } from './desk.js';

interface ApiDocument {
  paths: Record<string, Record<string, { tags?: string[] }>>;
  components: { schemas: Record<string, { examples?: unknown[] }> };
}

describeHouse('what follow-up answers', (house) => {
  it('is what the OpenAPI document says, and so are its examples', async () => {
    const document = bodyOf<ApiDocument>(await house().browser().get('/api/openapi.json'));
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    const check = (schema: string, value: unknown): void => {
      const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
      expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
    };

    const manager = await house().signedIn('manager');
    const administrator = await house().signedIn('administrator');
    const rules = { adoptedOn: '2020-05-01', document: 'Dock rules', rules: [{ id: 'life-jacket-always' }] };
    check('AdoptedHouseRules', (await create(administrator, '/api/house-rules', rules).expect(201)).body);
    await create(manager, '/api/craft', { unitName: 'PWC 7', type: 'personal-watercraft' }).expect(201);
    const { id } = await openIncident(manager, house().now());
    await write(manager, id, 'people', peopleOf(STITCHED));
    const at = `/api/incidents/${id}`;
    const own = { title: 'Ask the marina', dueAt: house().now() };
    check('Task', (await create(manager, `${at}/tasks`, own).expect(201)).body);
    check('ShiftHandOver', (await create(manager, '/api/shift-hand-overs', {}).expect(201)).body);
    const task = await taskOf(manager, id, 'counsel-told');

    const read: readonly (readonly [string, string])[] = [
      ['TaskList', `${at}/tasks`],
      ['TaskWithEvents', `${at}/tasks/${task.id}`],
      ['TaskPage', '/api/tasks'],
      ['Escalations', '/api/escalations'],
      ['CallList', `${at}/call-list`],
      ['ClaimsClockList', `${at}/claims-clocks`],
      ['ClosingWarnings', `${at}/closing`],
      ['WhoMayBeWrittenTo', `${at}/who-may-be-written-to`],
      ['HouseRuleObservations', `${at}/house-rule-observations`],
      ['ShiftHandOverPage', '/api/shift-hand-overs'],
      ['HouseRulesStanding', '/api/house-rules'],
      ['NoticeAddress', '/api/notice-address'],
    ];
    for (const [schema, path] of read) check(schema, (await manager.get(path).expect(200)).body);

    const named = new Set(JSON.stringify(document.paths).match(/(?<=schemas\/)\w+/g));
    const examples = Object.entries(document.components.schemas).filter(([name]) => named.has(name));
    for (const [name, { examples: shown = [] }] of examples) for (const one of shown) check(name, one);
  });
});
