package org.proofcut.broken.web;

public record Page(String title) {}
