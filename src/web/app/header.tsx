import { Link, useLocation } from 'wouter-preact';
import { UnsentBadge } from '../device/unsent-badge.js';
import { Button } from '../look/button.js';
import { useWide } from '../look/use-wide.js';
import { usePickedPerson } from '../session/picked-person.js';
import { signOut, useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { pin } from '../words/pin.js';
import { chooseLanguage, language } from '../words/speak.js';
import { maySee } from './may-see.js';
import { Menu } from './menu.js';
import type { PageRoute } from './page-route.js';
import { ROUTES } from './routes.js';

/** So many stand in one row beside the name of the desk, also in Spanish. */
const MOST_IN_ROW = 6;

/** The top of every page. On a phone all pages stand behind one name; at a desk what is used all day stands in a row. */
export function Header() {
  const session = useSession();
  const wide = useWide();
  const pages = ROUTES.filter((route) => route.nav !== undefined && maySee(route, session) === 'yes');
  return (
    <header class="head">
      <Link class="desk-name" href="/">
        {common.deskName}
      </Link>
      {!wide && <UnsentBadge />}
      {wide ? (
        <WideTop pages={pages} />
      ) : (
        <Menu name={common.pages} kind="pages">
          <nav aria-label={common.pages}>
            <Links pages={pages} all={pages} />
          </nav>
          <Self />
        </Menu>
      )}
    </header>
  );
}

function WideTop({ pages }: { pages: readonly PageRoute[] }) {
  const { me } = useSession();
  const row = pages.length <= MOST_IN_ROW ? pages : pages.filter(({ allDay }) => allDay === true);
  const rest = pages.filter((page) => !row.includes(page));
  return (
    <>
      <nav class="row-of-pages" aria-label={common.pages}>
        <Links pages={row} all={pages} />
        {rest.length > 0 && (
          <Menu name={common.morePages} kind="pages over">
            <Links pages={rest} all={pages} />
          </Menu>
        )}
      </nav>
      <UnsentBadge />
      {me === null ? (
        <Self />
      ) : (
        <Menu name={me.name} kind="pages over at-end">
          <Self />
        </Menu>
      )}
    </>
  );
}

function Links({ pages, all }: { pages: readonly PageRoute[]; all: readonly PageRoute[] }) {
  const [path] = useLocation();
  // The longest: at /law/try that is "Try the law", and not "Law" too.
  const current = all
    .map(addressOf)
    .filter((to) => isWithin(path, to))
    .sort((a, b) => b.length - a.length)[0];
  return (
    <ul>
      {pages.map((page) => (
        <li key={page.path}>
          <Link
            href={addressOf(page)}
            {...(addressOf(page) === current && { 'aria-current': 'page' as const })}
          >
            {page.nav}
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** Who is there, and the way in or out. */
function Self() {
  const { me, device } = useSession();
  return (
    <div class="self">
      {me !== null && (
        <Link class="who" href="/password">
          {me.name}, {common.roles[me.role]}
        </Link>
      )}
      {me === null && device !== null && <WhoWrites device={device.name} />}
      {me === null ? (
        <Link href="/sign-in">{common.signIn}</Link>
      ) : (
        <Button look="plain" onPress={() => void signOut()}>
          {common.signOut}
        </Button>
      )}
      <Button look="plain" onPress={() => chooseLanguage(language() === 'en' ? 'es' : 'en')}>
        <span lang={language() === 'en' ? 'es' : 'en'}>{common.language}</span>
      </Button>
    </div>
  );
}

/** On a shared device: it, and whose name is picked. */
function WhoWrites({ device }: { device: string }) {
  const picked = usePickedPerson();
  return (
    <Link class="who" href="/who">
      {device}: {picked?.personName ?? pin.who.pick}
    </Link>
  );
}

const addressOf = ({ path, navPath = path }: PageRoute): string => navPath;

function isWithin(path: string, page: string): boolean {
  return page === '/' ? path === '/' : path === page || path.startsWith(`${page}/`);
}
