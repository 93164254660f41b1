using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class SupposeMapping(string json) : IEntityTypeConfiguration<SupposeRow>
{
    public void Configure(EntityTypeBuilder<SupposeRow> builder)
    {
        builder.ToTable("supposes");
        builder.HasKey(row => new { row.Workshop, row.Id });
        builder.HasOne<WorkshopRow>().WithMany().HasForeignKey(row => row.Workshop).OnDelete(DeleteBehavior.Restrict);
        builder.Property(row => row.Version).IsConcurrencyToken();
        builder.Property(row => row.Changes).HasColumnType(json);
    }
}
