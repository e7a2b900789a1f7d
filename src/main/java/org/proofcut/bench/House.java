package org.proofcut.bench;

import io.quarkus.arc.Arc;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.proofcut.content.Content;
import org.proofcut.content.Faulty;
import org.proofcut.content.OwnFolder;
import org.proofcut.content.OwnFolder.Look;
import org.proofcut.core.plan.Planner;

/**
 * The content that the service runs on. Ours is read once at start; faulty, it stops the start,
 * with every fault in the message: a sheet without its cautions is worse than none. The shop's own
 * is laid over it, then and whenever its folder has changed; faulty, it changes nothing.
 */
@Startup
@ApplicationScoped
public class House {

  private static final Logger LOG = Logger.getLogger(House.class);

  private final Content ours;
  private final OwnFolder folder;
  private final Held held;
  private volatile Standing newest;

  /** The last look at the folder, and the one that {@link #newest} comes of. */
  private Look last;

  private Look read;

  /** Whether something was planned by content that was not the newest any more. */
  private final AtomicBoolean behind = new AtomicBoolean();

  House(Content ours, Held held, @ConfigProperty(name = "proofcut.content.folder") Path folder) {
    this.ours = ours;
    this.held = held;
    this.folder = new OwnFolder(folder);
    newest =
        Standing.on(
            ours,
            new OwnShelf(this.folder.path(), false, List.of(), List.of(), Optional.empty()),
            "");
    last = this.folder.look();
    read = Look.nothing();
    if (!last.equals(read)) {
      lay(last);
    }
  }

  public Content content() {
    return standing().content();
  }

  public Planner planner() {
    return standing().planner();
  }

  /** What of the content is the shop's own. */
  public OwnShelf own() {
    return standing().own();
  }

  /** A request keeps what it began with. */
  private Standing standing() {
    var container = Arc.container();
    return container != null && container.requestContext().isActive()
        ? held.orHold(newest)
        : newest;
  }

  /** To be called when a plan was kept: it may have been made by what is no longer in force. */
  void planned() {
    if (standing() != newest) {
      behind.set(true);
    }
  }

  /**
   * Looks at the shop's folder again. What is being written is left alone: it is read when two
   * looks have found the same.
   *
   * @return whether what is in work has to be planned anew
   */
  synchronized boolean lookAgain() {
    var now = folder.look();
    boolean settled = now.equals(last);
    last = now;
    boolean changed = settled && !now.equals(read) && lay(now);
    boolean late = behind.getAndSet(false);
    return changed || late;
  }

  /** What is in force, in words that change with it; empty where it is ours alone. */
  String inForce() {
    return newest.own().files().isEmpty() ? "" : newest.mark();
  }

  /** Whether other content is in force now. */
  private boolean lay(Look look) {
    read = look;
    var overlay = folder.lay(look, ours);
    if (overlay.loaded() instanceof Faulty faulty) {
      return refuse(look, faulty);
    }
    var next =
        Standing.on(
            overlay.loaded().orThrow(),
            new OwnShelf(
                folder.path(), look.there(), overlay.files(), overlay.changes(), Optional.empty()),
            look.files().toString());
    if (!look.isEmpty()) {
      var cannot = Rehearsal.of(next);
      if (cannot.isPresent()) {
        return refuse(look, cannot.get());
      }
    }
    LOG.infof(
        "The shop's own content: %d files from %s, %d changes",
        overlay.files().size(), folder.path(), overlay.changes().size());
    boolean changed = next.content() != newest.content();
    newest = next;
    return changed;
  }

  private boolean refuse(Look look, Faulty faulty) {
    LOG.warnf(
        "The shop's own content in %s is not used; what was in force stays.\n%s",
        folder.path(), faulty.printed());
    newest = newest.refusing(look.there(), faulty);
    return false;
  }

  @Produces
  @ApplicationScoped
  Clock clock() {
    return Clock.systemDefaultZone();
  }
}
