import { Link, useLocation } from 'wouter-preact';
import { useSession } from '../session/session.js';
import { people } from '../words/en/people.js';

const { links: say } = people;

/** Between the pages about people, for those who may see each. */
export function PeopleLinks() {
  const { me } = useSession();
  const [path] = useLocation();
  const manages = me?.role === 'manager' || me?.role === 'administrator';
  const pages = [
    { href: '/people', words: say.people, may: manages },
    { href: '/people/roster', words: say.roster, may: true },
    { href: '/people/certificates', words: say.certificates, may: true },
    { href: '/devices', words: say.devices, may: me?.role === 'administrator' },
  ];
  return (
    <p class="links-line unprinted">
      {pages
        .filter(({ href, may }) => may && href !== path)
        .map(({ href, words }) => (
          <Link key={href} href={href}>
            {words}
          </Link>
        ))}
    </p>
  );
}
