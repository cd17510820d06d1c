CREATE TABLE settings (name TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;

CREATE TABLE inbox (key TEXT PRIMARY KEY, at INTEGER NOT NULL) WITHOUT ROWID;

CREATE TABLE conversations (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  key TEXT NOT NULL UNIQUE,
  revision INTEGER NOT NULL DEFAULT 0,
  state TEXT,
  pins TEXT,
  open_cases INTEGER NOT NULL DEFAULT 0,
  due_at INTEGER,
  changed_at INTEGER NOT NULL
);
CREATE INDEX conversations_due ON conversations (due_at) WHERE due_at IS NOT NULL;

CREATE TABLE readings (
  conversation INTEGER NOT NULL,
  number INTEGER NOT NULL,
  at INTEGER NOT NULL,
  stage TEXT NOT NULL,
  measure TEXT NOT NULL,
  body TEXT NOT NULL,
  PRIMARY KEY (conversation, number)
) WITHOUT ROWID;

CREATE TABLE cases (
  id TEXT PRIMARY KEY,
  conversation INTEGER NOT NULL,
  state TEXT NOT NULL,
  reason TEXT NOT NULL,
  taken_by TEXT,
  opened_at INTEGER NOT NULL,
  changed_at INTEGER NOT NULL,
  words TEXT NOT NULL,
  body TEXT NOT NULL
) WITHOUT ROWID;
CREATE INDEX cases_of_conversation ON cases (conversation);
CREATE INDEX cases_open ON cases (opened_at) WHERE state <> 'closed';

CREATE TABLE records (
  code TEXT PRIMARY KEY,
  conversation INTEGER,
  at INTEGER NOT NULL,
  procedure TEXT NOT NULL,
  machine TEXT NOT NULL,
  result TEXT NOT NULL,
  body TEXT NOT NULL
) WITHOUT ROWID;
CREATE INDEX records_of_conversation ON records (conversation);
CREATE INDEX records_by_age ON records (at);

CREATE TABLE outbox (
  row INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL,
  edit INTEGER NOT NULL,
  conversation INTEGER,
  destination TEXT NOT NULL,
  message TEXT NOT NULL,
  due_at INTEGER NOT NULL,
  attempts INTEGER NOT NULL DEFAULT 0,
  last_error TEXT,
  progress TEXT,
  state TEXT NOT NULL DEFAULT 'waiting',
  done_at INTEGER,
  gone_once_sent INTEGER NOT NULL DEFAULT 0,
  UNIQUE (id, edit)
);

CREATE TABLE snapshots (hash TEXT PRIMARY KEY, json TEXT NOT NULL, at INTEGER NOT NULL);

CREATE TABLE links (link TEXT PRIMARY KEY, value TEXT NOT NULL, about TEXT) WITHOUT ROWID;
CREATE INDEX links_about ON links (about) WHERE about IS NOT NULL;
