/** Stands where a word of somebody was, once it has been deleted. */
export const DELETED = 'deleted';

/**
 * Which fields of the sections that the service writes hold words of people, or about them. The rest are ids, hashes,
 * times, choices of a list, and who signed: they say that something was done, and stay.
 */
const WORDS: Readonly<Record<string, RegExp>> = {
  holds: /^\/holds\/[^/]+\/(released\/)?reason$/,
  'scope-answers': /^\/answers\/[^/]+\/reason$/,
  decisions: /^\/decisions\/[^/]+\/reason$/,
  filings:
    /^\/(filings\/[^/]+\/(filer|confirmation|remark)|legalCalls\/[^/]+\/(who|said)|operatorNotices\/[^/]+\/(toldBy|confirmation|words))$/,
  'hand-overs':
    /^\/(notices\/[^/]+\/(seenAt|callName|callNumber)|claims\/[^/]+\/(adjuster|phone|mail)|(links|mailings)\/[^/]+\/address)$/,
};

/** Lists that hold nothing else, and go whole. */
const WHOLE: Readonly<Record<string, RegExp>> = {
  reports: /^\/notes(\/|$)/,
  custody: /^\//,
  'outside-evidence': /^\//,
};

/** `isWordOfService('decisions', '/decisions/d1/reason')` is true. */
export function isWordOfService(section: string, path: string): boolean {
  return WORDS[section]?.test(path) === true;
}

/** `goesWithItsList('reports', '/notes/c1.owner/opinion/text')` is true. */
export function goesWithItsList(section: string, path: string): boolean {
  return WHOLE[section]?.test(path) === true;
}
