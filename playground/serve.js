/** Serves playground/dist on this machine alone, and prints the address. An argument is the port. */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';

const types = { '/': ['index.html', 'text/html; charset=utf-8'], '/licences.txt': ['licences.txt', 'text/plain; charset=utf-8'] };

const server = createServer((request, response) => {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  const [name, type] = types[pathname === '/index.html' ? '/' : pathname] ?? [];
  if (name === undefined) {
    response.writeHead(404).end();
    return;
  }
  readFile(new URL(`dist/${name}`, import.meta.url)).then(
    (bytes) => response.writeHead(200, { 'content-type': type, 'cache-control': 'no-cache' }).end(bytes),
    () => response.writeHead(404).end(),
  );
});
server.listen(Number(process.argv[2] ?? 4173), '127.0.0.1', () => {
  console.log(`The working page: http://localhost:${server.address().port}/ (Ctrl-C ends it)`);
});
