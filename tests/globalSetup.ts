import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Folder of this run's filled demo books. */
    readonly demoBooks: string;
  }
}

/** Builds dist/ once before all tests: many of them drive the built add-on, and a fresh clone has none. */
export function setup(project: TestProject): () => void {
  execFileSync(process.execPath, ['--import', 'tsx', 'scripts/build.ts'], { stdio: 'inherit' });
  const demoBooks = mkdtempSync(join(tmpdir(), 'poursmith-demo-'));
  project.provide('demoBooks', demoBooks);
  return () => rmSync(demoBooks, { recursive: true });
}
