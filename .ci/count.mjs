// Prints 'N passed, N failed' over the reports of both test runners; a step that failed outside them counts as one.
import { existsSync, readFileSync } from "node:fs";

const status = Number(process.argv[2] ?? 0);
const read = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : undefined);
const unit = read("test-results/unit.json");
const browser = read("test-results/browser.json");
const passed = (unit?.numPassedTests ?? 0) + (browser?.stats.expected ?? 0);
const failedTests = (unit?.numFailedTests ?? 0) + (browser?.stats.unexpected ?? 0) + (browser?.stats.flaky ?? 0);
const failed = failedTests || (status === 0 && unit && browser ? 0 : 1);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 || status !== 0 ? 1 : 0);
