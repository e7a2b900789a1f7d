package org.proofcut.broken.core.unlabelled;

record Stray(String name) {}
