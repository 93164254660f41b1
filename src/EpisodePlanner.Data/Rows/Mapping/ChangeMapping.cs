using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class ChangeMapping(string json) : IEntityTypeConfiguration<ChangeRow>
{
    public void Configure(EntityTypeBuilder<ChangeRow> builder)
    {
        builder.ToTable("changes");
        builder.HasKey(row => new { row.Workshop, row.Version });
        builder.HasOne<WorkshopRow>().WithMany().HasForeignKey(row => row.Workshop).OnDelete(DeleteBehavior.Restrict);
        builder.Property(row => row.Act).HasConversion<string>();
        builder.Property(row => row.After).HasColumnType(json);
        builder.Property(row => row.Before).HasColumnType(json);
    }
}
