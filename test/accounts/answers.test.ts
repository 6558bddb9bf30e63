import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, expect, it } from 'vitest';
import { type Browser, change, create, describeHouse, PASSWORD, type Person } from './house.js';

interface Answer {
  status: number;
  body: unknown;
}

describeHouse('what is answered', (house) => {
  let validators: (route: string, status: number) => ValidateFunction;
  let administrator: Browser;
  let staff: Person;
  beforeAll(async () => {
    const document = (await house().browser().get('/api/openapi.json')).body as {
      paths: Record<string, Record<string, { responses: Record<string, { content: object }> }>>;
    };
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    validators = (route, status) => {
      const [method = '', path = ''] = route.split(' ');
      const at = ['paths', path, method.toLowerCase(), 'responses', String(status), 'content'];
      const pointer = [...at, 'application/json', 'schema'].map((token) =>
        encodeURIComponent(token.replaceAll('~', '~0').replaceAll('/', '~1')),
      );
      return ajv.compile({ $ref: `http://desk/#/${pointer.join('/')}` });
    };
    administrator = await house().signedIn('administrator');
    staff = await house().person('staff');
  });

  const expectDocumented = async (route: string, answer: PromiseLike<Answer>): Promise<{ id: string }> => {
    const { status, body } = await answer;
    const validate = validators(route, status);
    expect([route, validate(body), validate.errors]).toEqual([route, true, null]);
    return body as { id: string };
  };

  it('is what the OpenAPI document says', async () => {
    const day = house().now().slice(0, 10);
    const { browser: device } = await house().device(administrator);
    const browser = house().browser();
    const signIn = { signInName: staff.signInName, password: PASSWORD };
    await expectDocumented('POST /api/session', browser.post('/api/session').send(signIn));
    await browser.put('/api/session/pin').send({ password: PASSWORD, pin: '4071' }).expect(204);
    await expectDocumented('GET /api/session', browser.get('/api/session'));

    const draft = { name: 'Sam Ito', signInName: 'sam', role: 'staff' };
    const { id } = await expectDocumented(
      'POST /api/accounts',
      create(administrator, '/api/accounts', draft),
    );
    await expectDocumented('GET /api/accounts/{id}', administrator.get(`/api/accounts/${id}`));
    const closing = change(administrator, `/api/accounts/${id}`, 1, { active: false });
    await expectDocumented('PATCH /api/accounts/{id}', closing);
    const reset = administrator.post(`/api/accounts/${id}/password-reset`);
    await expectDocumented('POST /api/accounts/{id}/password-reset', reset);
    await expectDocumented('GET /api/accounts', administrator.get('/api/accounts?limit=1'));

    const made = create(administrator, '/api/devices', { name: 'Boat phone' });
    const phone = await expectDocumented('POST /api/devices', made);
    await expectDocumented('GET /api/devices', administrator.get('/api/devices'));
    await expectDocumented('DELETE /api/devices/{id}', administrator.delete(`/api/devices/${phone.id}`));

    const certificate = { accountId: staff.id, title: 'First aid', expiresOn: '2020-01-01' };
    const paper = await expectDocumented(
      'POST /api/certificates',
      create(administrator, '/api/certificates', certificate),
    );
    const renewed = change(administrator, `/api/certificates/${paper.id}`, 1, { number: 'FA-2' });
    await expectDocumented('PATCH /api/certificates/{id}', renewed);
    await expectDocumented('GET /api/certificates', administrator.get(`/api/certificates?day=${day}`));

    const entry = { accountId: staff.id, duty: 'dock', from: day, to: day };
    const on = await expectDocumented('POST /api/roster', create(administrator, '/api/roster', entry));
    const moved = change(administrator, `/api/roster/${on.id}`, 1, { duty: 'rescue' });
    await expectDocumented('PATCH /api/roster/{id}', moved);
    await expectDocumented('GET /api/roster', administrator.get(`/api/roster?from=${day}&to=${day}`));

    await expectDocumented('GET /api/device', device.get('/api/device').set('Desk-Person', staff.id));
    await expectDocumented('GET /api/device/people', device.get(`/api/device/people?day=${day}`));
    const confirmation = { accountId: staff.id, pin: '4071', since: house().now() };
    await expectDocumented(
      'POST /api/device/confirmations',
      device.post('/api/device/confirmations').send(confirmation),
    );
  });
});
