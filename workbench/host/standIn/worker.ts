import vm from 'node:vm';
import { parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import type {
  JobResult,
  ServiceReply,
  Transport,
  WorkerJob,
  WorkerSetup,
} from './protocolTypes.ts';
import { loadBundle, messageOf, runJob } from './runJob.ts';

// The host made this worker with exactly this setup.
const setup = workerData as WorkerSetup;
const script = new vm.Script(setup.code, { filename: 'Code.js' });

/** The platform's calls block: wait for the host, which works on its own thread. */
const transport: Transport = (call) => {
  const before = Atomics.load(setup.flag, 0);
  parentPort?.postMessage({ kind: 'service', call });
  // The host posts the reply before it counts, and nothing else on this port; yet once in some hundred thousand calls the
  // count is seen first, and the reply a moment later.
  for (;;) {
    Atomics.wait(setup.flag, 0, before);
    const received = receiveMessageOnPort(setup.replies);
    if (received) return received.message as ServiceReply;
  }
};

function run(job: WorkerJob): JobResult {
  try {
    return runJob(loadBundle(script, setup.api, transport, job.now), job);
  } catch (error) {
    return { kind: 'failure', message: messageOf(error) };
  }
}

parentPort?.on('message', (job: WorkerJob) => {
  parentPort?.postMessage({ kind: 'done', result: run(job) });
});
