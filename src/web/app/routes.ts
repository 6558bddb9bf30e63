import type { Role } from '../../../shared/kernel/role.js';
import { titles } from '../words/titles.js';
import type { PageRoute } from './page-route.js';

const STAFF: readonly Role[] = ['staff', 'manager', 'administrator'];
const MANAGERS: readonly Role[] = ['manager', 'administrator'];

/** Every page, in the order of the list at the top. A page is added here, and nowhere else. */
export const ROUTES: readonly PageRoute[] = [
  {
    path: '/',
    load: () => import('../today/today-page.js'),
    who: [...STAFF, 'counsel', 'device'],
    nav: titles.today,
    allDay: true,
  },
  { path: '/call/sheet', load: () => import('../call/sheet-page.js'), who: [...STAFF, 'device'] },
  {
    path: '/call/:id?',
    load: () => import('../call/call-page.js'),
    who: [...STAFF, 'device'],
    nav: titles.call,
    allDay: true,
    navPath: '/call',
  },
  {
    path: '/out-and-back',
    load: () => import('../outing/out-and-back-page.js'),
    who: [...STAFF, 'device'],
    nav: titles.outAndBack,
    allDay: true,
  },
  {
    path: '/out-and-back/closing-count/:id?',
    load: () => import('../outing/closing-count-page.js'),
    who: [...STAFF, 'device'],
  },
  {
    path: '/out-and-back/not-back/:id',
    load: () => import('../outing/not-back-page.js'),
    who: [...STAFF, 'device'],
  },
  { path: '/incidents/:id', load: () => import('../record/overview-page.js'), who: [...STAFF, 'counsel'] },
  {
    path: '/register',
    load: () => import('../register/register-page.js'),
    who: [...STAFF, 'counsel'],
    nav: titles.register,
    allDay: true,
  },
  {
    path: '/incidents/:id/record',
    load: () => import('../history/record-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/history',
    load: () => import('../history/history-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/shots',
    load: () => import('../evidence/shots-page.js'),
    who: [...STAFF, 'counsel'],
  },
  { path: '/incidents/:id/officer', load: () => import('../officer/officer-page.js'), who: STAFF },
  {
    path: '/incidents/:id/other-operator',
    load: () => import('../officer/other-operator-page.js'),
    who: STAFF,
  },
  {
    path: '/what-to-say',
    load: () => import('../officer/what-to-say-page.js'),
    who: [...STAFF, 'counsel', 'device'],
  },
  {
    path: '/follow-up',
    load: () => import('../follow-up/follow-up-page.js'),
    who: STAFF,
    nav: titles.followUp,
    allDay: true,
  },
  {
    path: '/shift-hand-over/:id?',
    load: () => import('../shift/shift-hand-over-page.js'),
    who: STAFF,
    nav: titles.shiftHandOver,
    navPath: '/shift-hand-over',
  },
  {
    path: '/incidents/:id/follow-up',
    load: () => import('../follow-up/incident-follow-up-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/record/:section',
    load: () => import('../record/section-page.js'),
    who: [...STAFF, 'counsel', 'device'],
  },
  {
    path: '/incidents/:id/duties',
    load: () => import('../decision/duties-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/determinations/:sequence',
    load: () => import('../decision/earlier-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/hand-over',
    load: () => import('../hand-over/hand-over-page.js'),
    who: [...MANAGERS, 'counsel'],
  },
  { path: '/fleet', load: () => import('../fleet/fleet-page.js'), who: STAFF, nav: titles.fleet },
  { path: '/fleet/add', load: () => import('../fleet/add-craft-page.js'), who: MANAGERS },
  { path: '/fleet/:id', load: () => import('../fleet/craft-page.js'), who: STAFF },
  { path: '/places', load: () => import('../places/places-page.js'), who: STAFF, nav: titles.places },
  { path: '/places/:kind/:id', load: () => import('../places/place-page.js'), who: STAFF },
  { path: '/policies', load: () => import('../places/policies-page.js'), who: MANAGERS },
  { path: '/policies/:id', load: () => import('../places/policy-page.js'), who: MANAGERS },
  { path: '/people', load: () => import('../people/people-page.js'), who: MANAGERS, nav: titles.people },
  { path: '/people/roster', load: () => import('../people/roster-page.js'), who: STAFF },
  { path: '/people/certificates', load: () => import('../people/certificates-page.js'), who: STAFF },
  { path: '/people/add', load: () => import('../people/add-person-page.js'), who: ['administrator'] },
  { path: '/people/:id', load: () => import('../people/person-page.js'), who: MANAGERS },
  { path: '/devices', load: () => import('../people/devices-page.js'), who: ['administrator'] },
  { path: '/mail', load: () => import('../mail/mail-page.js'), who: ['administrator'], nav: titles.mail },
  { path: '/unsent', load: () => import('../unsent/unsent-page.js'), who: [...STAFF, 'counsel', 'device'] },
  {
    path: '/incidents/:id/counsel',
    load: () => import('../counsel/counsel-page.js'),
    who: [...STAFF, 'counsel'],
  },
  {
    path: '/incidents/:id/scene',
    load: () => import('../scene/scene-page.js'),
    who: [...STAFF, 'counsel'],
  },
  { path: '/house-rules', load: () => import('../house-rules/house-rules-page.js'), who: MANAGERS },
  { path: '/renewal', load: () => import('../renewal/renewal-page.js'), who: MANAGERS },
  { path: '/check', load: () => import('../check/check-page.js'), who: ['anyone'] },
  { path: '/law', load: () => import('../law/law-page.js'), who: ['anyone'], nav: titles.law },
  { path: '/law/try', load: () => import('../law/try-page.js'), who: ['anyone'], nav: titles.tryLaw },
  { path: '/law/:code', load: () => import('../law/code-page.js'), who: ['anyone'] },
  { path: '/vocabulary', load: () => import('../vocabulary/vocabulary-page.js'), who: ['anyone'] },
  { path: '/collect/:token', load: () => import('../collect/collect-page.js'), who: ['anyone'] },
  { path: '/sign-in', load: () => import('../session/sign-in-page.js'), who: ['anyone'] },
  {
    path: '/password',
    load: () => import('../session/password-page.js'),
    who: [...STAFF, 'counsel'],
  },
  { path: '/pin', load: () => import('../session/pin-page.js'), who: STAFF },
  { path: '/who', load: () => import('../session/who-page.js'), who: [...STAFF, 'device'] },
  { path: '/enrol', load: () => import('../session/enrol-page.js'), who: ['anyone'] },
];
