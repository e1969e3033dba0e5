import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { MessageChannel, Worker } from 'node:worker_threads';
import { buildSync } from 'esbuild';
import { PLATFORM_API } from './platform/platformApi.ts';
import type {
  Job,
  JobResult,
  ServiceCall,
  ServiceReply,
  WorkerJob,
  WorkerSetup,
} from './standIn/protocolTypes.ts';
/** Answers the platform calls of one job; may wait, while the add-on's thread stands still. */
export type Service = (call: ServiceCall) => ServiceReply | Promise<ServiceReply>;

/** The platform's limit for one run [ms]. */
const TIME_LIMIT = 6 * 60_000;

/** A thread that holds the add-on and runs one job at a time, each in fresh globals. */
export interface CallRunner {
  run(job: Job, service: Service, now?: number): Promise<JobResult>;
  close(): Promise<void>;
}

type FromWorker =
  | { readonly kind: 'service'; readonly call: ServiceCall }
  | { readonly kind: 'done'; readonly result: JobResult };

export function callRunner(code: string): CallRunner {
  const source = workerSource();
  let thread: Thread | undefined;

  async function run(job: Job, service: Service, now?: number): Promise<JobResult> {
    thread ??= startThread(source, code);
    const message: WorkerJob = { ...job, ...(now === undefined ? {} : { now }) };
    const outcome = await runOn(thread, message, service);
    if (outcome.kind !== 'lost') return outcome;
    await thread.worker.terminate();
    thread = undefined;
    return { kind: 'failure', message: outcome.message };
  }

  return {
    run,
    close: async () => {
      await thread?.worker.terminate();
    },
  };
}

type Outcome = JobResult | { readonly kind: 'lost'; readonly message: string };

function runOn(thread: Thread, message: WorkerJob, service: Service): Promise<Outcome> {
  const { worker } = thread;
  return new Promise((resolve) => {
    const finish = (outcome: Outcome) => {
      clearTimeout(limit);
      thread.current = undefined;
      // An idle thread must not keep the process alive; a running one must.
      worker.unref();
      resolve(outcome);
    };
    const lost = (text: string) => finish({ kind: 'lost', message: text });
    const limit = setTimeout(() => lost('Exceeded maximum execution time'), TIME_LIMIT);
    thread.current = { service, finish, lost };
    worker.ref();
    worker.postMessage(message);
  });
}

interface Thread {
  readonly worker: Worker;
  current:
    | {
        readonly service: Service;
        readonly finish: (outcome: Outcome) => void;
        readonly lost: (message: string) => void;
      }
    | undefined;
}

function startThread(source: string, code: string): Thread {
  const { port1, port2 } = new MessageChannel();
  const flag = new Int32Array(new SharedArrayBuffer(4));
  const workerData: WorkerSetup = { code, api: PLATFORM_API, replies: port2, flag };
  const worker = new Worker(source, { eval: true, workerData, transferList: [port2] });
  port1.unref();
  const thread: Thread = { worker, current: undefined };
  worker.on('message', async (from: FromWorker) => {
    if (from.kind === 'done') {
      thread.current?.finish(from.result);
      return;
    }
    const reply = await thread.current?.service(from.call);
    port1.postMessage(reply);
    Atomics.add(flag, 0, 1);
    Atomics.notify(flag, 0);
  });
  worker.on('error', (error) => thread.current?.lost(error.message));
  worker.on('exit', () => thread.current?.lost('the run ended early'));
  return thread;
}

/** The worker as plain JavaScript, because a worker thread does not load TypeScript. */
function workerSource(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  const built = buildSync({
    entryPoints: [join(here, 'standIn', 'worker.ts')],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
  });
  const file = built.outputFiles[0];
  if (!file) throw new Error('the worker could not be built');
  return file.text;
}
