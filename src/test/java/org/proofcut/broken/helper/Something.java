package org.proofcut.broken.helper;

record Something(String any) {}
