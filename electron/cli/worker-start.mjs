// A worker thread starts without the loader for TypeScript on some Node versions: register it, then go on in TypeScript.
import { register } from 'tsx/esm/api';

register();
await import(process.argv[2]);
