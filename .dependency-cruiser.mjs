/**
 * The floors of the house as failing rules: who may import whom. The two tables below are the only place
 * where a room or a server module is listed; every rule is made from them.
 */

/** Packages that are nothing but types: the cruiser finds no code of theirs, the compiler vouches for them. */
const TYPES_ALONE = ['geojson', 'topojson-specification'];

/** The rooms of shared/, lowest first, each with the packages it may use. A room imports only rooms above it here. */
const ROOMS = [
  { room: 'kernel' },
  { room: 'quantity' },
  { room: 'time', packages: ['temporal-polyfill'] },
  {
    room: 'place',
    packages: ['geodesy', 'astronomy-engine', '@photostructure/tz-lookup', 'flatbush', ...TYPES_ALONE],
  },
  { room: 'vocabulary' },
  { room: 'identifiers' },
  { room: 'call' },
  { room: 'record' },
  { room: 'scene' },
  { room: 'outing', packages: ['temporal-polyfill'] },
  { room: 'proof', packages: ['@noble/hashes', 'asn1js', 'pkijs'] },
  { room: 'law' },
  { room: 'determination' },
  { room: 'decision' },
  { room: 'report' },
  { room: 'follow-up', packages: ['temporal-polyfill'] },
  { room: 'hand-over', packages: ['@zip.js/zip.js'] },
  { room: 'retention' },
  { room: 'patterns' },
  { room: 'wire', packages: ['class-validator', 'class-transformer'] },
];

/** The modules of src/server, lowest first. A module imports the `x.api.ts` of modules above it here. */
const MODULES = [
  'platform',
  'accounts',
  'mail',
  'fleet',
  'law',
  'vocabulary',
  'place',
  'call',
  'record',
  'outing',
  'evidence',
  'determination',
  'decision',
  'follow-up',
  'report',
  'hand-over',
  'requests',
  'retention',
  'register',
  'backup',
  'demo',
  'health',
];

/** Packages that the browser client may use: typeface, drawing, routes, what was asked lately, storage, archives; maps where one is shown. */
const WEB_PACKAGES = [
  '@fontsource-variable/atkinson-hyperlegible-next',
  '@tanstack/preact-query',
  'idb',
  'leaflet',
  'preact',
  'wouter-preact',
  '@zip.js/zip.js',
  '@photostructure/tz-lookup',
];

const oneOf = (names) => `(${names.join('|')})`;
const packagePaths = (names) => names.map((name) => `^(node_modules/)?(@types/)?${name}(/|$)`);
const PACKAGE_TYPES = [
  'npm',
  'npm-dev',
  'npm-optional',
  'npm-peer',
  'npm-bundled',
  'npm-no-pkg',
  'npm-unknown',
  'unknown',
];

const rule = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

const everywhere = [
  rule(
    'no-circular',
    'Two files that need each other are one thought: move what both use into a file below them.',
    {},
    { circular: true },
  ),
  rule(
    'no-unresolvable',
    'The import leads nowhere: correct the path (with its .js ending) or add the package to package.json.',
    {},
    { couldNotResolve: true, pathNot: packagePaths(TYPES_ALONE) },
  ),
  rule(
    'no-barrel',
    'No index files: import the file that holds the thing; a server module has x.api.ts as its one face.',
    {},
    { path: '/index\\.(ts|js|mjs)$', pathNot: '^node_modules/' },
  ),
  rule(
    'nothing-imports-test',
    'Move what the product needs out of test/; tests look at the product, never the other way round.',
    { pathNot: '^test/' },
    { path: '^test/' },
  ),
  rule(
    'data-imports-nothing',
    'forms/ and fixtures/ are data only: put code that reads them into the server module or the build.',
    { path: '^(forms|fixtures)/' },
    {},
  ),
  rule(
    'migrations-stand-alone',
    'A migration must mean the same in ten years: write out what it needs, or put it into migrations/.',
    { path: '^migrations/' },
    { pathNot: ['^migrations/', '^node_modules/typeorm/'] },
  ),
  rule(
    'product-needs-no-dev-package',
    'The installed product has no development packages: move the package to dependencies, or its use to test/.',
    { path: '^(shared|migrations|src/(server|cli|web))/' },
    {
      dependencyTypes: ['npm-dev'],
      dependencyTypesNot: ['type-only', 'npm'],
      pathNot: '^node_modules/@types/',
    },
  ),
];

const rooms = ROOMS.map(({ room }) => room);

const shared = [
  rule(
    'shared-room-listed',
    'A new room of shared/ takes its place in the table of rooms in .dependency-cruiser.mjs.',
    {},
    { path: '^shared/', pathNot: `^shared/${oneOf(rooms)}/` },
  ),
  rule(
    'shared-room-listed-importer',
    'A new room of shared/ takes its place in the table of rooms in .dependency-cruiser.mjs.',
    { path: '^shared/', pathNot: `^shared/${oneOf(rooms)}/` },
    {},
  ),
  rule(
    'shared-no-node',
    'shared/ runs in the browser too: take what you need as an argument and let src/ read files and clocks.',
    { path: '^shared/' },
    { dependencyTypes: ['core'] },
  ),
  rule(
    'shared-no-outside',
    'shared/ is the lowest floor: take law, data and services as arguments; src/ hands them in.',
    { path: '^shared/' },
    { path: '^(src|migrations|forms|fixtures|dist)/' },
  ),
  ...rooms.map((room, place) =>
    rule(
      `shared-room-order-${room}`,
      `shared/${room} may use only rooms above it in the table: move the common part up, or this use down.`,
      { path: `^shared/${room}/` },
      { path: `^shared/${oneOf(rooms)}/`, pathNot: `^shared/${oneOf(rooms.slice(0, place + 1))}/` },
    ),
  ),
  ...ROOMS.map(({ room, packages = [] }) =>
    rule(
      `shared-packages-${room}`,
      `shared/${room} uses only the packages its line in the table names: write it plainly, or argue for the package there.`,
      { path: `^shared/${room}/` },
      { dependencyTypes: PACKAGE_TYPES, pathNot: packagePaths(packages) },
    ),
  ),
];

const source = [
  rule(
    'web-only-shared',
    'The browser client reads shared/ and speaks to the server over HTTP: put common shapes into shared/wire.',
    { path: '^src/web/' },
    { path: '^(src|migrations|forms|fixtures)/', pathNot: '^src/web/' },
  ),
  rule(
    'web-no-node',
    'The browser has no Node.js: use the web platform.',
    { path: '^src/web/' },
    { dependencyTypes: ['core'] },
  ),
  rule(
    'web-packages',
    'The browser client uses only the packages that .dependency-cruiser.mjs names for it.',
    { path: '^src/web/' },
    { dependencyTypes: PACKAGE_TYPES, pathNot: packagePaths(WEB_PACKAGES) },
  ),
  rule(
    'cli-only-faces',
    'A command is thin: it uses shared/ and the x.api.ts of server modules; move the work there.',
    { path: '^src/cli/' },
    {
      path: '^(src|migrations|forms|fixtures)/',
      pathNot: ['^src/cli/', '^src/server/[^/]+/[^/]+\\.api\\.ts$'],
    },
  ),
  rule(
    'build-only-faces',
    'The build uses shared/ and the x.api.ts of server modules; move the work there.',
    { path: '^src/build/' },
    {
      path: '^(src|migrations|forms|fixtures)/',
      pathNot: ['^src/build/', '^src/server/[^/]+/[^/]+\\.api\\.ts$'],
    },
  ),
  rule(
    'server-not-upstairs',
    'The server knows neither its browser client nor the commands nor the build: put what is common into shared/.',
    { path: '^src/server/' },
    { path: '^src/(web|cli|build)/' },
  ),
  rule(
    'server-top-is-top',
    'main.ts and app.module.ts put the modules together; no module may import them back.',
    { path: '^src/server/[^/]+/' },
    { path: '^src/server/[^/]+\\.ts$' },
  ),
  rule(
    'server-module-listed',
    'A new server module takes its place in the table of modules in .dependency-cruiser.mjs.',
    {},
    { path: '^src/server/[^/]+/', pathNot: `^src/server/${oneOf(MODULES)}/` },
  ),
  rule(
    'server-module-listed-importer',
    'A new server module takes its place in the table of modules in .dependency-cruiser.mjs.',
    { path: '^src/server/[^/]+/', pathNot: `^src/server/${oneOf(MODULES)}/` },
    {},
  ),
  rule(
    'server-platform-floor',
    'platform/ is the ground floor of the server: of ours it uses shared/kernel alone; hand the rest in.',
    { path: '^src/server/platform/' },
    { path: '^(src|shared|migrations)/', pathNot: ['^src/server/platform/', '^shared/kernel/'] },
  ),
  rule(
    'server-module-face',
    'Another module is seen only through its x.api.ts: export there what others need.',
    { path: '^src/server/([^/]+)/' },
    { path: '^src/server/[^/]+/', pathNot: ['^src/server/$1/', '^src/server/platform/', '\\.api\\.ts$'] },
  ),
  ...MODULES.map((module, place) =>
    rule(
      `server-module-order-${module}`,
      `${module} may use only modules above it in the table: let the later one call, or hand the need in.`,
      { path: `^src/server/${module}/` },
      {
        path: `^src/server/${oneOf(MODULES)}/`,
        pathNot: `^src/server/${oneOf(MODULES.slice(0, place + 1))}/`,
      },
    ),
  ),
  rule(
    'nodemailer-behind-the-queue',
    'Only platform/mail speaks to mail servers: queue what is to be sent with MailQueue, beside its cause.',
    { path: '^src/', pathNot: '^src/server/platform/mail/' },
    { path: '^node_modules/nodemailer/' },
  ),
  rule(
    'typeorm-behind-the-door',
    'Only platform/database and <module>/database speak TypeORM: put the query there and return plain values.',
    { path: '^src/', pathNot: '^src/server/[^/]+/database/' },
    { path: '^node_modules/(typeorm|@nestjs/typeorm)/' },
  ),
];

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [...everywhere, ...shared, ...source],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|coverage|screenshots|var)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['types', 'import', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
    },
  },
};
