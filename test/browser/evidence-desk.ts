import type { Page } from 'playwright-core';
import sharp from 'sharp';
import type { AuthoritiesSection } from '../../shared/record/response-sections.js';
import { IncidentCase, told } from '../decision/incident-case.js';
import { readPdf } from '../report/read-pdf.js';
import type { BrowserDesk } from './desk.js';

/** A picture of one colour, as a browser is given a file. */
export async function photograph(
  colour: string,
): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const picture = sharp({ create: { width: 900, height: 700, channels: 3, background: colour } });
  return { name: `${colour}.jpg`, mimeType: 'image/jpeg', buffer: await picture.jpeg().toBuffer() };
}

/** PWC 7 and its driver, who is hurt, in a record with more than anybody outside may be told. */
export async function collision(desk: BrowserDesk) {
  const one = await IncidentCase.open(await desk.house.signedIn('manager'), { craftNamed: ['PWC 7'] });
  await one.write('craft', {
    craft: [
      {
        id: 'c1',
        ours: true,
        name: 'PWC 7',
        type: told('personal-watercraft'),
        hullNumber: told('ABCD1234E607'),
        registrationNumber: told('TX 4711 AB'),
        colours: 'red and white',
        ownerName: 'Heron Rentals',
        ownerContact: '100 Dock Road, Pottsboro',
        insurer: 'Lake Insurance',
        aboard: told(2),
      },
    ],
  });
  await one.write('people', {
    everyoneAccountedFor: told('yes'),
    people: [
      {
        id: 'p1',
        name: 'Rena Moss',
        address: '9 Oak Lane, Denison',
        phone: '555-0142',
        birthDate: told('1990-04-02'),
        role: told('operator'),
        craft: 'c1',
        outcome: told('injured'),
        injuries: [{ id: 'i1', nature: told('broken wrist') }],
        hospital: told('County Hospital'),
      },
      { id: 'p2', name: 'Tom Moss', role: told('passenger'), craft: 'c1', outcome: told('unhurt') },
    ],
  });
  await one.write('time-and-place', {
    occurred: told({ at: '2026-06-13T15:10:00-05:00', precision: 'about', withinMinutes: 10 }),
    timeZone: told('America/Chicago'),
    position: told({ latitude: 33.83, longitude: -96.575 }),
    description: told('off Heron Cove'),
    waterBody: told('Lake Texoma'),
  });
  await one.write('rental', { agreement: 'R-2026-118' });
  const section = async <Document>(name: string): Promise<Document> =>
    (
      (await one.browser.get(`/api/incidents/${one.id}/sections/${name}`).expect(200)).body as {
        document: Document;
      }
    ).document;
  /** Later she is said to be unhurt, and less is known of her. */
  const unhurt = async (): Promise<void> => {
    await one.browser
      .put(`/api/incidents/${one.id}/sections/people`)
      .set('If-Match', '"1"')
      .send({
        document: {
          everyoneAccountedFor: told('yes'),
          people: [
            { id: 'p1', name: 'Rena Moss', role: told('operator'), craft: 'c1', outcome: told('unhurt') },
            { id: 'p2', name: 'Tom Moss', role: told('passenger'), craft: 'c1', outcome: told('unhurt') },
          ],
        },
        reason: 'She said it was a bruise.',
      })
      .expect(200);
  };
  return {
    id: one.id,
    browser: one.browser,
    unhurt,
    section,
    authorities: () => section<AuthoritiesSection>('authorities'),
  };
}

/** How many sheets of letter paper it takes. */
export async function sheetsOf(page: Page): Promise<number> {
  return (await readPdf(await page.pdf({ format: 'Letter' }))).pages;
}
