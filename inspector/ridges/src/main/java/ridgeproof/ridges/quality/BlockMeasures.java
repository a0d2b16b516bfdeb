package ridgeproof.ridges.quality;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import ridgeproof.ridges.map.BlockGrid;
import ridgeproof.ridges.map.OrientationField;
import ridgeproof.ridges.map.RidgeMaps;
import ridgeproof.ridges.map.RidgeRegion;
import ridgeproof.ridges.map.Statistics;
import ridgeproof.ridges.map.WorkingResolution;
import ridgeproof.ridges.map.XSignatureField;

/** Sums up the block maps over the clear ridges of one print. */
final class BlockMeasures {

  private static final double STRONG = 0.8;

  private final RidgeMaps maps;
  private final int[] ridges;

  BlockMeasures(RidgeMaps maps, RidgeRegion region) {
    this.maps = maps;
    int[] found = new int[region.size()];
    int count = 0;
    for (int block : region.blocks()) {
      if (maps.isRidge(block)) {
        found[count++] = block;
      }
    }
    ridges = Arrays.copyOf(found, count);
  }

  /** Blocks with clear ridges. */
  int count() {
    return ridges.length;
  }

  double ridgeAreaMm2() {
    return ridges.length * BlockGrid.BLOCK_MM2;
  }

  FlowMeasure flow(RidgeRegion region) {
    double[] periods = values(block -> maps.signatures().period(block));
    double median = Statistics.quantile(periods, periods.length, 0.5);
    double spread =
        Statistics.quantile(periods, periods.length, 0.75)
            - Statistics.quantile(periods, periods.length, 0.25);
    return new FlowMeasure(
        mean(block -> maps.tensors().coherence(block)),
        OrientationField.of(maps, region.mask(), 0).roughness(),
        median / maps.scale(),
        median * WorkingResolution.MM_PER_PIXEL,
        median <= 0 ? 0 : spread / median);
  }

  ClarityMeasure clarity() {
    XSignatureField signatures = maps.signatures();
    double[] edges = values(signatures::edge);
    double[] relative =
        values(block -> 2 * signatures.edge(block) / Math.max(1, signatures.period(block)));
    return new ClarityMeasure(
        mean(signatures::clarity),
        mean(signatures::dominance),
        mean(signatures::unevenness),
        Statistics.quantile(edges, edges.length, 0.5) / maps.scale(),
        Statistics.quantile(relative, relative.length, 0.5),
        median(signatures::grain));
  }

  private double median(IntToDoubleFunction value) {
    double[] values = values(value);
    return Statistics.quantile(values, values.length, 0.5);
  }

  /** Part of the blocks whose contrast is less than half of what a strong one has. */
  double faintShare() {
    double[] contrasts = values(maps.signatures()::contrast);
    double strong = Statistics.quantile(contrasts, contrasts.length, STRONG);
    return mean(block -> maps.signatures().contrast(block) < strong / 2 ? 1 : 0);
  }

  double contrast() {
    double[] contrasts = values(maps.signatures()::contrast);
    return Statistics.quantile(contrasts, contrasts.length, 0.5);
  }

  double ridgeShare() {
    double[] shares = values(maps.signatures()::ridgeShare);
    return Statistics.quantile(shares, shares.length, 0.5);
  }

  /** Part of the blocks with a ridge share between these. */
  double shareWithin(double from, double to) {
    return mean(
        block -> {
          double share = maps.signatures().ridgeShare(block);
          return share >= from && share < to ? 1 : 0;
        });
  }

  /** Median over the print's blocks of the gray level midway between ridges and valleys. */
  double level() {
    double[] levels = values(maps.signatures()::level);
    return Statistics.quantile(levels, levels.length, 0.5);
  }

  private double mean(IntToDoubleFunction value) {
    double sum = 0;
    for (int block : ridges) {
      sum += value.applyAsDouble(block);
    }
    return ridges.length == 0 ? 0 : sum / ridges.length;
  }

  private double[] values(IntToDoubleFunction value) {
    double[] values = new double[ridges.length];
    for (int i = 0; i < ridges.length; i++) {
      values[i] = value.applyAsDouble(ridges[i]);
    }
    return values;
  }
}
