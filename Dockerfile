# The service with the web application in it. Two stages, so that what builds is not carried along.
FROM node:24-bookworm-slim AS build
WORKDIR /app
COPY . .
RUN npm ci --no-audit --no-fund \
 && node apps/api/scripts/generate-client.mjs \
 && (cd apps/web && npx vite build) \
 && (cd apps/api && npx vite build) \
 && npm prune --omit=dev

FROM node:24-bookworm-slim
ENV NODE_ENV=production MALLOC_ARENA_MAX=2 HOST=0.0.0.0
WORKDIR /app
COPY --from=build --chown=node:node /app /app
USER node
EXPOSE 3000
HEALTHCHECK --interval=10s --timeout=3s CMD ["node", "-e", "fetch('http://127.0.0.1:3000/ready').then((a) => process.exit(a.ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "apps/api/dist/main.js", "serve"]
