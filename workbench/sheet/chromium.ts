import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { arch, platform, tmpdir } from 'node:os';
import { join } from 'node:path';

/** How to start a Chromium: for page tests and for printing a run sheet without a page. */
export interface Chromium {
  readonly executablePath: string;
  readonly args: string[];
  readonly env: Record<string, string>;
}

/** Quiet, without a screen, and without asking anything of the network. */
const ARGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Where the usual installers put it. */
const INSTALLED = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/**
 * Finds a Chromium: `CHROMIUM_PATH`, else the one that came with the packages (64-bit Linux), else an installed one.
 *
 * @param fonts - folder of the only fonts that it may find (Linux); those of the machine and of the package where left out
 * @throws Error in one sentence that says what to do when there is none
 */
export async function chromium(fonts?: string): Promise<Chromium> {
  const found = await find();
  if (fonts === undefined) return found;
  const settings = join(await mkdtemp(join(tmpdir(), 'poursmith-fonts-')), 'fonts.conf');
  await writeFile(settings, fontSettings([fonts], `${settings}.cache`));
  return { ...found, env: { ...found.env, FONTCONFIG_FILE: settings } };
}

async function find(): Promise<Chromium> {
  const env = strings(process.env);
  const chosen = process.env['CHROMIUM_PATH'];
  if (chosen !== undefined) {
    if (!existsSync(chosen)) throw new Error(`CHROMIUM_PATH names ${chosen}, which does not exist`);
    return { executablePath: chosen, args: ARGS, env };
  }
  if (platform() === 'linux' && arch() === 'x64') return packaged(env);
  const executablePath = INSTALLED.find((path) => existsSync(path));
  if (executablePath === undefined) {
    throw new Error('no Chromium found: install one and set CHROMIUM_PATH to its program');
  }
  return { executablePath, args: ARGS, env };
}

/** Unpacks the packaged program once, with the libraries and fonts that a bare machine lacks. */
async function packaged(env: Record<string, string>): Promise<Chromium> {
  const home = join(tmpdir(), 'poursmith-chromium-143');
  if (!existsSync(home)) {
    // Another run may unpack at the same time, and an interrupted one must leave nothing half done.
    const own = `${home}-${process.pid}`;
    await unpack(own);
    // The machine's fonts where it has any, and the package's.
    const folders = ['/usr/share/fonts', join(home, 'fonts')];
    await writeFile(join(own, 'fonts.conf'), fontSettings(folders, join(home, 'font-cache')));
    await rename(own, home).catch(() => rm(own, { recursive: true }));
  }
  return {
    executablePath: join(home, 'chromium'),
    args: ARGS,
    env: {
      ...env,
      LD_LIBRARY_PATH: join(home, 'al2023', 'lib'),
      FONTCONFIG_FILE: join(home, 'fonts.conf'),
    },
  };
}

/** The package unpacks into the temporary folder, and its libraries only where the second variable says so. */
const FOR_UNPACKING = { TMPDIR: '', AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' };

/** What the package sets for the program it starts; here only the program gets it. */
const SET_BY_PACKAGE = ['LD_LIBRARY_PATH', 'FONTCONFIG_PATH', 'HOME'];

async function unpack(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  const names = [...Object.keys(FOR_UNPACKING), ...SET_BY_PACKAGE];
  const before = names.map((name) => [name, process.env[name]] as const);
  Object.assign(process.env, FOR_UNPACKING, { TMPDIR: folder });
  try {
    const { default: shipped } = await import('@sparticuz/chromium');
    await shipped.executablePath();
  } finally {
    for (const [name, value] of before) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

function fontSettings(folders: readonly string[], cache: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
${folders.map((folder) => `  <dir>${folder}</dir>`).join('\n')}
  <cachedir>${cache}</cachedir>
</fontconfig>
`;
}

function strings(env: NodeJS.ProcessEnv): Record<string, string> {
  const entries = Object.entries(env).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value] as const],
  );
  return Object.fromEntries(entries);
}
