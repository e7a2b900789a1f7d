package org.proofcut.core.operation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Edge;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.stock.Material;

/** One task without a cutter that belongs to no job. */
public sealed interface HandTask {

  /** The operation that it would be in a job: its words and its rules hold here too. */
  OperationKind kind();

  /** What it is. */
  String title();

  /** What is worked on; empty where that does not matter. */
  default Optional<Material> material() {
    return Optional.empty();
  }

  /** What is glued, finished or cleaned with; empty where nothing is. */
  default Optional<Liquid> liquid() {
    return Optional.empty();
  }

  /** What is worked out of it: a weight, or how easily a liquid takes fire. */
  default List<Worked<?>> figures() {
    return liquid().<Worked<?>>map(Liquid::category).stream().toList();
  }

  /** The task as an operation without a set-up. */
  default Operation operation() {
    return new Operation(
        kind().id(),
        kind(),
        title(),
        Optional.empty(),
        Optional.empty(),
        List.of(
            new PartCut("piece", "the piece", Optional.empty(), Edge.REFERENCE, Optional.empty())),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of());
  }

  /** Something is done to wood or board. */
  sealed interface OnMaterial extends HandTask {

    /** What it is made of. */
    Material made();

    @Override
    default Optional<Material> material() {
      return Optional.of(made());
    }
  }

  /**
   * A sheet or a part is carried.
   *
   * @param longest its longest side
   * @param wholeSheet whether it is a sheet as it was bought
   */
  record Carry(
      Material made,
      Worked<Amount> weight,
      Length longest,
      boolean wholeSheet,
      boolean alone,
      boolean stairs)
      implements OnMaterial {

    @Override
    public OperationKind kind() {
      return OperationKind.CARRY;
    }

    @Override
    public String title() {
      return "Carry";
    }

    @Override
    public List<Worked<?>> figures() {
      return List.of(weight);
    }
  }

  /** Parts are put together to see that they fit. */
  record DryFit(Material made) implements OnMaterial {

    @Override
    public OperationKind kind() {
      return OperationKind.DRY_FIT;
    }

    @Override
    public String title() {
      return "Dry fit";
    }
  }

  /**
   * Parts are joined for good.
   *
   * @param glue empty where none is used
   */
  record Fasten(Material made, Optional<Liquid> glue, boolean screws, boolean nails)
      implements OnMaterial {

    @Override
    public OperationKind kind() {
      return OperationKind.FASTEN;
    }

    @Override
    public String title() {
      return "Glue, screw, nail";
    }

    @Override
    public Optional<Liquid> liquid() {
      return glue;
    }
  }

  /**
   * A surface is sanded.
   *
   * @param byMachine whether with a sander held in the hands
   * @param extracted whether an extractor is connected to it
   */
  record Sand(Material made, boolean byMachine, boolean extracted) implements OnMaterial {

    @Override
    public OperationKind kind() {
      return OperationKind.SAND;
    }

    @Override
    public String title() {
      return "Sand";
    }
  }

  /** Oil, varnish or the like is put on. */
  record Finish(Liquid with, Applied applied, boolean outdoors, boolean wetRoom)
      implements HandTask {

    /** How it is put on. */
    public enum Applied {
      WIPED,
      BRUSHED,
      SPRAYED
    }

    @Override
    public OperationKind kind() {
      return OperationKind.FINISH;
    }

    @Override
    public String title() {
      return "Put a finish on";
    }

    @Override
    public Optional<Liquid> liquid() {
      return Optional.of(with);
    }
  }

  /**
   * The shop, or tools in it, are cleaned.
   *
   * @param with what is on the rags, or the solvent; empty where neither is there
   */
  record CleanUp(What what, Optional<Liquid> with) implements HandTask {

    /** What is done. */
    public enum What {
      DUST,
      COMPRESSED_AIR,
      RAGS,
      SOLVENT;

      /** As content and conditions write it. */
      public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
      }
    }

    @Override
    public OperationKind kind() {
      return OperationKind.CLEAN_UP;
    }

    @Override
    public String title() {
      return "Clean up";
    }

    @Override
    public Optional<Liquid> liquid() {
      return with;
    }
  }
}
