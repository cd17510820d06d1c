CREATE TABLE settings (name TEXT PRIMARY KEY, value TEXT NOT NULL);

-- Conversations are counted here, not by a sequence: a turn that is undone must not leave a gap.
CREATE TABLE counters (name TEXT PRIMARY KEY, value BIGINT NOT NULL);
INSERT INTO counters VALUES ('conversations', 0);

CREATE TABLE inbox (key TEXT PRIMARY KEY, at BIGINT NOT NULL);

CREATE TABLE conversations (
  number BIGINT PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  revision BIGINT NOT NULL DEFAULT 0,
  state TEXT,
  pins TEXT,
  open_cases BIGINT NOT NULL DEFAULT 0,
  due_at BIGINT,
  changed_at BIGINT NOT NULL
);
CREATE INDEX conversations_due ON conversations (due_at) WHERE due_at IS NOT NULL;

CREATE TABLE readings (
  conversation BIGINT NOT NULL,
  number BIGINT NOT NULL,
  at BIGINT NOT NULL,
  stage TEXT NOT NULL,
  measure TEXT NOT NULL,
  body TEXT NOT NULL,
  PRIMARY KEY (conversation, number)
);

CREATE TABLE cases (
  id TEXT PRIMARY KEY,
  conversation BIGINT NOT NULL,
  state TEXT NOT NULL,
  reason TEXT NOT NULL,
  taken_by TEXT,
  opened_at BIGINT NOT NULL,
  changed_at BIGINT NOT NULL,
  words TEXT NOT NULL,
  body TEXT NOT NULL
);
CREATE INDEX cases_of_conversation ON cases (conversation);
CREATE INDEX cases_open ON cases (opened_at) WHERE state <> 'closed';

CREATE TABLE records (
  code TEXT PRIMARY KEY,
  conversation BIGINT,
  at BIGINT NOT NULL,
  procedure TEXT NOT NULL,
  machine TEXT NOT NULL,
  result TEXT NOT NULL,
  body TEXT NOT NULL
);
CREATE INDEX records_of_conversation ON records (conversation);
CREATE INDEX records_by_age ON records (at);

CREATE TABLE outbox (
  row BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  id TEXT NOT NULL,
  edit BIGINT NOT NULL,
  conversation BIGINT,
  destination TEXT NOT NULL,
  message TEXT NOT NULL,
  due_at BIGINT NOT NULL,
  attempts BIGINT NOT NULL DEFAULT 0,
  last_error TEXT,
  progress TEXT,
  state TEXT NOT NULL DEFAULT 'waiting',
  done_at BIGINT,
  gone_once_sent BIGINT NOT NULL DEFAULT 0,
  claimed_by TEXT,
  lease_until BIGINT NOT NULL DEFAULT 0,
  UNIQUE (id, edit)
);
CREATE INDEX outbox_waiting ON outbox (destination, row) WHERE state = 'waiting';
CREATE INDEX outbox_in_order ON outbox (row) WHERE state = 'waiting';

CREATE TABLE snapshots (hash TEXT PRIMARY KEY, json TEXT NOT NULL, at BIGINT NOT NULL);

CREATE TABLE links (link TEXT PRIMARY KEY, value TEXT NOT NULL, about TEXT);
CREATE INDEX links_about ON links (about) WHERE about IS NOT NULL;
