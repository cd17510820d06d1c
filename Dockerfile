# The bot in a container: Node 24 runs the sources as they are, so there is nothing to build.
FROM node:24-slim AS packages
WORKDIR /app
COPY package.json package-lock.json ./
# No package needs its install script to run: what they would fetch is the project's own Node, which the image has.
RUN npm ci --omit=dev --ignore-scripts && npm cache clean --force

FROM node:24-slim
ENV NODE_ENV=production \
    DATA_DIR=/data \
    PORT=8080
WORKDIR /app
COPY --from=packages /app/node_modules ./node_modules
COPY package.json LICENSE NOTICE ./
COPY src ./src
COPY adapters ./adapters
COPY content ./content
# The owner of the sources is root: the program cannot change itself, only what lies in /data.
RUN mkdir /data && chown node:node /data
VOLUME /data
USER node
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=5s --start-period=30s --retries=3 \
    CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/health`).then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
# Node itself is the first process, so that a stop signal reaches it.
CMD ["node", "src/start.mjs", "bot"]
