import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { UnsentBadge } from '../device/unsent-badge.js';
import { Button } from '../look/button.js';
import { NewerVersion } from './newer-version.js';
import { usePickedPerson } from '../session/picked-person.js';
import { signOut, useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { pin } from '../words/pin.js';
import { chooseLanguage, language } from '../words/speak.js';
import { maySee } from './may-see.js';
import { ROUTES } from './routes.js';

/** What stands around every page: the way past it, the list of pages, who is there, and the cautions. */
export function Frame({ children }: { children: ComponentChildren }) {
  return (
    <>
      <a class="skip" href="#page">
        {common.skip}
      </a>
      <Header />
      <NewerVersion />
      {children}
      <footer class="foot">
        <p>{common.caution.help}</p>
        <p>{common.caution.law}</p>
      </footer>
    </>
  );
}

function Header() {
  const session = useSession();
  const [path] = useLocation();
  const list = useRef<HTMLDetailsElement>(null);
  const pages = ROUTES.filter((route) => route.nav !== undefined && maySee(route, session) === 'yes');
  // The longest: at /law/try that is "Try the law", and not "Law" too.
  const current = pages
    .map(({ path: own, navPath = own }) => navPath)
    .filter((to) => isWithin(path, to))
    .sort((a, b) => b.length - a.length)[0];
  useEffect(() => {
    if (list.current !== null) list.current.open = false;
  }, [path]);
  return (
    <header class="head">
      <Link class="desk-name" href="/">
        {common.deskName}
      </Link>
      <UnsentBadge />
      <details class="pages" ref={list}>
        <summary>{common.pages}</summary>
        <nav aria-label={common.pages}>
          <ul>
            {pages.map(({ path: own, navPath: to = own, nav }) => (
              <li key={to}>
                <Link href={to} {...(to === current && { 'aria-current': 'page' })}>
                  {nav}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
        <Self />
      </details>
    </header>
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

function isWithin(path: string, page: string): boolean {
  return page === '/' ? path === '/' : path === page || path.startsWith(`${page}/`);
}
