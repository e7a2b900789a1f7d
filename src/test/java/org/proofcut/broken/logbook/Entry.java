package org.proofcut.broken.logbook;

import jakarta.persistence.Cacheable;

/** Marked as stored, but not as an entity: no test's database should look for its table. */
@Cacheable
class Entry {}
