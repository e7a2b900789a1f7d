package org.proofcut.broken.shelf;

import jakarta.persistence.EntityManager;
import org.proofcut.broken.web.Page;

record Shelf(Page page) {

  void store(EntityManager entities) {
    entities.persist(page);
  }
}
