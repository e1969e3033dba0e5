import { existsSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { openHost } from './host/openHost.ts';
import { fillBook } from './server/fillBook.ts';
import { ADD_ON, freshBuilds, PAGE } from './server/freshBuilds.ts';
import { isLoopback } from './server/isOurHost.ts';
import { type StartOptions, startOptions, USAGE } from './server/startOptions.ts';
import { startServer } from './server/startServer.ts';

function say(text: string) {
  process.stdout.write(`${text}\n`);
}

async function start({ book, fill, port, address }: StartOptions): Promise<void> {
  await freshBuilds(say);
  const isNew = !existsSync(book);
  say(isNew ? `Making ${book}…` : `Opening ${book}…`);
  await mkdir(dirname(book), { recursive: true });
  const host = await openHost({ dist: ADD_ON, book });
  host.listen((event) => {
    if (event.kind === 'log') say(`add-on: ${event.text}`);
  });
  if (isNew) await fillBook(host, fill, say);
  const name = basename(book, '.xlsx');
  const server = await startServer({
    host,
    page: PAGE,
    book: { name, keeps: 'file' },
    address,
    port,
  });
  if (!isLoopback(address)) {
    say(`Listening on ${address}: whoever has the address below can read and change the book.`);
  }
  say(`Ready. Open ${server.url}`);
  say('Changes are kept in the file as you go. Stop with Ctrl+C.');
  const stop = async () => {
    say('Saving…');
    await server.close();
    await host.close();
    process.exit(0);
  };
  process.once('SIGINT', () => void stop());
  process.once('SIGTERM', () => void stop());
}

try {
  await start(startOptions(process.argv.slice(2)));
} catch (error) {
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${message}\n\n${USAGE}\n`);
  process.exit(1);
}
