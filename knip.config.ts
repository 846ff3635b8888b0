import type { KnipConfig } from "knip";

/**
 * Nothing that nobody reads: no file, export or dependency without a reader. `npm test` asks twice: once with the tests as readers, once
 * (`--production`) of what runs alone, where an export that its own file uses may stand for its tests.
 */
const config = ({ production }: { production?: boolean }): KnipConfig => ({
  entry: [
    "app/threads/{thread.mjs,worker.ts}!",
    // The server reads it as it lies, before anything is built.
    "app/door/{open-door,failed-page,gate,packed}.ts!",
    "app/people/{open-to-people,print-address,cert-names}.ts!",
    "app/commands/*.ts!",
    "demo/load-demo.ts!",
    "demo/demo-snapshot.ts!",
    ...(production ? ["tests/bench/*.ts!"] : []),
    "tests/bench/{cold-plan,fill-farm}.ts",
    "app/kept-pages/{kept-pages,read-ahead}.ts!",
    "db/*/run-{copy,restore,password}.ts!",
    "tests/browser/day-by-message.mjs",
    "tests/trust/{victim,other-server,on-disks}.ts",
    // Certificates, which only tests ask for.
    "lib/**/check-*.ts!",
  ],
  project: ["{app,lib,db,demo}/**!", "tests/bench/**!", "tests/**"],
  // Read from their folders: a script that a page runs, a library without types, and two faces.
  ignoreDependencies: ["axe-core", "jstat", "@fontsource/besley", "@fontsource-variable/asap"],
  // Linux's own; tests/trust/disks.ts does without where they are not allowed.
  ignoreBinaries: ["unshare", "mount", "umount"],
  ignoreExportsUsedInFile: production === true,
});

export default config;
